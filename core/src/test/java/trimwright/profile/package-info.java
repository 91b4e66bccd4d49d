@NullMarked
package trimwright.profile;

import org.jspecify.annotations.NullMarked;
