@NullMarked
package trimwright.recording;

import org.jspecify.annotations.NullMarked;
