package freshfurrow.desk.server;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.sse.SseClient;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * What open pages are told as it happens (server-sent events, HTML Living Standard section 9.2). Of events of one name a page that is
 * slow hears the newest only. Each page has a thread of its own, so that none waits for another.
 */
public final class Events {
    private static final int MOST_PAGES = 64;
    private static final int SIGN_OF_LIFE_S = 15;

    private final Set<Page> pages = ConcurrentHashMap.newKeySet();

    /** Tells all open pages. */
    public void tell(String name, JsonNode what) {
        pages.forEach(page -> page.tell(name, what.toString()));
    }

    /** Keeps a page's connection until it is closed. */
    void join(SseClient client) {
        if (pages.size() >= MOST_PAGES) {
            client.close();
            return;
        }
        Page page = new Page(client);
        pages.add(page);
        client.keepAlive();
        client.onClose(() -> {
            pages.remove(page);
            page.gone.countDown();
            page.tell("", "");
        });
        Thread thread = new Thread(page, "page");
        thread.setDaemon(true);
        thread.start();
    }

    /** Ends all connections. */
    void close() {
        pages.forEach(page -> page.client.close());
    }

    private static final class Page implements Runnable {
        private final SseClient client;
        private final CountDownLatch gone = new CountDownLatch(1);
        private final LinkedBlockingQueue<String> names = new LinkedBlockingQueue<>();
        private final Map<String, String> newest = new ConcurrentHashMap<>();

        Page(SseClient client) {
            this.client = client;
        }

        void tell(String name, String what) {
            if (newest.put(name, what) == null) {
                names.add(name);
            }
        }

        @Override
        public void run() {
            try {
                client.sendComment("joined");
                while (gone.getCount() > 0) {
                    String name = names.poll(SIGN_OF_LIFE_S, TimeUnit.SECONDS);
                    if (name == null) {
                        client.sendComment("still here");
                    } else {
                        send(name);
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        private void send(String name) {
            String what = newest.remove(name);
            if (what != null && gone.getCount() > 0) {
                client.sendEvent(name, what);
            }
        }
    }
}
