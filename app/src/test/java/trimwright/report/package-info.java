@NullMarked
package trimwright.report;

import org.jspecify.annotations.NullMarked;
