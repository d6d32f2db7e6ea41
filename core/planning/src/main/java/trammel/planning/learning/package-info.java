/** What a shop's closed jobs say about its standard hours. */
package trammel.planning.learning;
