/** Whether what stands in one place leaves room for what stands beside it. */
package trammel.assembly.fit;
