/** Speed measurements that reach into the library's files. */
@NullMarked
package trimwright.store;

import org.jspecify.annotations.NullMarked;
