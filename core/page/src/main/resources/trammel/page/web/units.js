// @ts-check
/** Lengths and money as a shop writes them. */

const INCH_MM = 25.4;

/**
 * A length in shop units: inches with a fraction, or millimetres.
 * @param {number} mm
 * @param {string} units
 * @param {number} [parts] the finest fraction of an inch
 */
export function length(mm, units, parts = 32) {
  if (units === 'metric') return (Math.abs(mm) < 0.05 ? 0 : mm).toFixed(1).replace('-0.0', '0.0') + ' mm';
  let count = Math.round((Math.abs(mm) / INCH_MM) * parts);
  const sign = mm < 0 && count > 0 ? '-' : '';
  const whole = Math.floor(count / parts);
  let top = count % parts;
  let below = parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    below /= 2;
  }
  const fraction = top > 0 ? top + '/' + below : '';
  return sign + [whole > 0 || top === 0 ? whole : '', fraction].filter((one) => one !== '').join(' ') + ' in';
}

/** The step to which a dragged point snaps, mm: 1/16 in, or 1 mm. */
export const step = (units) => (units === 'metric' ? 1 : INCH_MM / 16);

/**
 * @param {number} mm
 * @param {string} units
 */
export const snapped = (mm, units) => Math.round(mm / step(units)) * step(units);

/**
 * A snapped length as it is written into the job file.
 * @param {number} mm
 * @param {string} units
 */
export const written = (mm, units) => length(mm, units, 16);

/**
 * @param {number} amount
 * @param {string} currency
 */
export const money = (amount, currency) =>
  new Intl.NumberFormat('en-US', { style: 'currency', currency }).format(amount);

/** @param {number} hours */
export const hours = (hours) => hours.toFixed(1) + ' h';

/**
 * @param {number} kg
 * @param {string} units
 */
export const weight = (kg, units) =>
  units === 'metric' ? kg.toFixed(kg < 10 ? 2 : 1) + ' kg' : (kg / 0.45359237).toFixed(kg < 5 ? 2 : 1) + ' lb';
