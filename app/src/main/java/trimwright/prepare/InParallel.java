package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Tasks that know nothing of each other, on a fixed pool of threads; answers in the order of the tasks. */
public final class InParallel {
    private InParallel() {}

    /** On as many threads as there are processors. */
    public static <A, B> List<B> map(String name, List<A> tasks, Function<A, B> work) throws InterruptedException {
        return map(name, Runtime.getRuntime().availableProcessors(), tasks, work);
    }

    /**
     * On that many threads.
     *
     * @param name of the threads
     * @throws IllegalStateException with the cause where a task failed
     */
    public static <A, B> List<B> map(String name, int threads, List<A> tasks, Function<A, B> work)
            throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<B>> running = new ArrayList<>();
            for (A task : tasks) {
                running.add(pool.submit(() -> work.apply(task)));
            }
            List<B> answers = new ArrayList<>();
            for (Future<B> task : running) {
                answers.add(task.get());
            }
            return answers;
        } catch (ExecutionException e) {
            throw new IllegalStateException("could not be computed: " + name, e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
