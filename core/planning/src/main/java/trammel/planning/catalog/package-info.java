/**
 * What a shop can buy and do: steel stock, joints, springs, bolts, priced items, standard
 * operations, welding practice, limits and load cases. Read from files, overridable by the shop.
 */
package trammel.planning.catalog;
