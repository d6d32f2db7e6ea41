/** Lines of an assembly as the eye sees it: edges, and which of them stand behind something. */
package trammel.assembly.view;
