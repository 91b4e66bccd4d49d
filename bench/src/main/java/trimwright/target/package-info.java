/** Speed measurements that reach into the search for targets. */
@NullMarked
package trimwright.target;

import org.jspecify.annotations.NullMarked;
