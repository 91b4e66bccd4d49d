package trimwright.evidence;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A test that reads shared reference files; it is skipped with a message where they are absent. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Tag("reference")
@Test
public @interface ReferenceTest {}
