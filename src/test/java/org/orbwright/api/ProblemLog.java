package org.orbwright.api;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.orbwright.api.guard.ProblemMappers;

/** What the service logs of problems, above the level for debugging, until this is closed. */
final class ProblemLog extends Handler implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(ProblemMappers.class.getName());

    private final List<String> messages = Collections.synchronizedList(new ArrayList<>());

    ProblemLog() {
        LOG.addHandler(this);
    }

    /** The messages so far. */
    List<String> messages() {
        return List.copyOf(messages);
    }

    @Override
    public void publish(LogRecord entry) {
        if (entry.getLevel().intValue() >= Level.INFO.intValue()) {
            messages.add(entry.getMessage());
        }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {
        LOG.removeHandler(this);
    }
}
