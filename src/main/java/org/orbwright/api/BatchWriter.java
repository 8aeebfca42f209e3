package org.orbwright.api;

import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.util.function.BooleanSupplier;
import org.orbwright.api.guard.StreamWriter;
import org.orbwright.api.guard.WorkPermits;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.Limits;

/** Writes the answers of a batch as they are computed. */
@Provider
@Produces(Format.NDJSON_TYPE)
public class BatchWriter extends StreamWriter<Batch> {
    BatchWriter(Instance<Limits> limits, Instance<WorkPermits> places) {
        super(Batch.class, limits, places);
    }

    @Override
    public void write(Batch batch, MediaType media, OutputStream body, BooleanSupplier left) throws IOException {
        batch.answer(body, left);
    }
}
