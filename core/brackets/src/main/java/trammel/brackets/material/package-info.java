/** What brackets and bars are made of and held with, as the catalog lists it. */
package trammel.brackets.material;
