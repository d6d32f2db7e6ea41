/** What brackets do to a rail: the stretches that they take, and the plates that close it there. */
package trammel.brackets.rail;
