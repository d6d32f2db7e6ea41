/**
 * What takes the ends of bars on rails and axle: brackets drawn from where the joints sit, their
 * welds from the outlines, and the shop's operations that go with them. Units: mm.
 */
package trammel.brackets.barend;
