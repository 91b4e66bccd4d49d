/** What tests use to name their outside sources and to find shared reference files. */
@NullMarked
package trimwright.evidence;

import org.jspecify.annotations.NullMarked;
