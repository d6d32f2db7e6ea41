/**
 * The work that a finished layout asks for: parts, plates, tubes, welds and operations, each with
 * its reason.
 */
package trammel.brackets.work;
