/**
 * Checks of a finished layout: what was found, the limit it is held against, the verdict, and a
 * change that the engine has tried.
 */
package trammel.engine.checks;
