package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import trimwright.text.NoAnswerException;

class BackgroundWorkTest {
    private record Word(String text) implements BackgroundWork.Result {
        @Override
        public byte[] document() {
            return ('"' + text + '"').getBytes(StandardCharsets.UTF_8);
        }
    }

    @Test
    void workIsAnsweredByProgressUntilItIsDoneAndDoneOnce() throws Exception {
        CountDownLatch halfway = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        AtomicInteger runs = new AtomicInteger();
        BackgroundWork<Word> work = new BackgroundWork<>(2);
        Routes routes = config -> config.get(
                "/api/word",
                ctx -> work.answer(ctx, "a", 2, progress -> {
                    runs.incrementAndGet();
                    progress.done(1);
                    halfway.countDown();
                    await(go);
                    return new Word("done");
                }));
        try (work;
                Workbench workbench = Workbench.start(List.of(routes), 0)) {
            assertEquals(202, get(workbench).statusCode());
            await(halfway);
            assertEquals(
                    "{\"schema\":\"progress/1\",\"done\":1,\"total\":2}",
                    get(workbench).body());
            assertNull(work.find("a"));
            go.countDown();
            assertEquals("\"done\"", untilDone(workbench).body());
            assertEquals(new Word("done"), work.find("a"));
            assertEquals(1, runs.get());
        }
    }

    @Test
    void failedWorkIsSaidAndMayBeAskedForAgain() throws Exception {
        AtomicInteger runs = new AtomicInteger();
        BackgroundWork<Word> work = new BackgroundWork<>(2);
        Routes routes = config -> config.get(
                "/api/word",
                ctx -> work.answer(ctx, "a", 1, progress -> {
                    if (runs.incrementAndGet() == 1) {
                        throw new NoAnswerException("No balance exists.");
                    }
                    return new Word("second");
                }));
        try (work;
                Workbench workbench = Workbench.start(List.of(routes), 0)) {
            HttpResponse<String> failed = untilDone(workbench);
            assertEquals(422, failed.statusCode());
            assertEquals("{\"schema\":\"fault/1\",\"message\":\"No balance exists.\"}", failed.body());
            assertEquals("\"second\"", untilDone(workbench).body());
        }
    }

    private static HttpResponse<String> untilDone(Workbench workbench) throws Exception {
        HttpResponse<String> answer = get(workbench);
        while (answer.statusCode() == 202) {
            Thread.sleep(10);
            answer = get(workbench);
        }
        return answer;
    }

    private static HttpResponse<String> get(Workbench workbench) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(workbench.address() + "api/word"))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
