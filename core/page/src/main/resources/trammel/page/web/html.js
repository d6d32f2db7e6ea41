// @ts-check
/** The one way in which this page makes elements: text can never become markup. */
import { h } from 'preact';
import htm from 'htm';

export const html = htm.bind(h);
