/** A torque arm on a drop link, two lower bars and a lateral bar. */
package trammel.plugins.torquearm;
