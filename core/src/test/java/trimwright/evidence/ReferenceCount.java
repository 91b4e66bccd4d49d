package trimwright.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.TestTag;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Counts the tests tagged {@code reference} that ran and that were skipped, for ./verify to print. */
public final class ReferenceCount implements TestExecutionListener {
    private int ran;
    private int skipped;

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        if (!test.isTest() || !test.getTags().contains(TestTag.create("reference"))) {
            return;
        }
        if (result.getStatus() == TestExecutionResult.Status.ABORTED) {
            skipped++;
        } else {
            ran++;
        }
    }

    @Override
    public void testPlanExecutionFinished(TestPlan plan) {
        String target = System.getProperty("trimwright.target");
        if (target == null) {
            return;
        }
        try {
            Files.writeString(Path.of(target, "reference-tests.txt"), ran + " " + skipped + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
