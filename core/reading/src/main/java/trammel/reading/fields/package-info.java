/**
 * Fields as data: key, kind, range, default and help stand in one place, from which reading,
 * messages, help, JSON Schema and documentation all come. The job file, catalogs and plugin options
 * use it.
 */
package trammel.reading.fields;
