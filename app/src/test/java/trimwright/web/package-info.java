@NullMarked
package trimwright.web;

import org.jspecify.annotations.NullMarked;
