/** One material order a supplier, over one or many jobs. */
package trammel.planning.order;
