/** Cutting plans: which pieces come out of which stick or sheet, at the least price. */
package trammel.cutting;
