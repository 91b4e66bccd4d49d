@NullMarked
package trimwright.response;

import org.jspecify.annotations.NullMarked;
