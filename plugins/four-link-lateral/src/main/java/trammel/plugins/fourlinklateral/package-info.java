/** Four links and a lateral bar. */
package trammel.plugins.fourlinklateral;
