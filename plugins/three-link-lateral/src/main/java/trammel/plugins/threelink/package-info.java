/** Three links and a lateral bar. */
package trammel.plugins.threelink;
