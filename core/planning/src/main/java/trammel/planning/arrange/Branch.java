package trammel.planning.arrange;

import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;

/**
 * One kind of layout: a linkage, a spring and a side of the rails.
 *
 * @param index its place among all, from which its own random numbers start
 * @param linkage its linkage
 * @param spring its spring
 * @param edits what makes this kind out of the job
 */
record Branch(int index, AxleLinkage linkage, SpringMount spring, Edits edits) {}
