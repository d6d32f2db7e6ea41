/**
 * Shop quantities as people write them, and as the tool prints them: inches with fractions,
 * degrees, pounds, or their metric counterparts. Inside the tool every value is in mm, rad, kg, N,
 * N/mm, Nmm, MPa (N/mm²), m/s.
 */
package trammel.reading.quantity;
