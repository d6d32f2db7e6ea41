/** How the page is served: who may ask, what is answered, under what policy. */
package trammel.page.http;
