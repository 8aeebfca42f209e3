package org.orbwright.api.guard;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import org.orbwright.api.cells.SheetJson;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.document.Document;

/** Answers a worked design while the service starts, so that no caller waits for what every sheet needs. */
@ApplicationScoped
public class WarmUp {
    private final RequestReader reader;
    private volatile boolean done;

    WarmUp(RequestReader reader) {
        this.reader = reader;
    }

    @Startup
    void answerOnce() {
        String json = DesignLibrary.all().values().iterator().next().json();
        Document document = reader.read(json.getBytes(StandardCharsets.UTF_8));
        done = !SheetJson.of(document).isEmpty();
    }

    /** Whether the worked design has been answered. */
    boolean isDone() {
        return done;
    }
}
