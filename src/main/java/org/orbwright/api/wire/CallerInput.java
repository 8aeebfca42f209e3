package org.orbwright.api.wire;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** The body of a request: that nothing more comes in, or that the caller is gone, is no fault of the service. */
public final class CallerInput extends FilterInputStream {
    public CallerInput(InputStream body) {
        super(body);
    }

    @Override
    public int read() {
        try {
            return super.read();
        } catch (IOException e) {
            throw tooSlow();
        }
    }

    @Override
    public int read(byte[] bytes, int from, int length) {
        try {
            return super.read(bytes, from, length);
        } catch (IOException e) {
            throw tooSlow();
        }
    }

    private static RequestException tooSlow() {
        String detail = "The rest of the body did not come in.";
        return new RequestException(ProblemKind.BODY_TOO_SLOW, detail, List.of());
    }
}
