/**
 * Cutting bars and tubes: pieces of one section out of stock lengths and remnants, with a saw kerf.
 */
package trammel.cutting.bars;
