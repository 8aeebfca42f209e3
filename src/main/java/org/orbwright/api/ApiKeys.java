package org.orbwright.api;

import io.quarkus.logging.Log;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hashed keys in a file, a line each: a name, a blank, and the key's SHA-256 as 64 hex digits; {@code #} begins a
 * comment. Keys are meant to be random (32 bytes, say), for which a plain hash is enough: a slow one protects what
 * people choose. The file is read again when it changes, so that keys can be added and withdrawn while the service
 * runs.
 */
final class ApiKeys {
    private static final Pattern LINE = Pattern.compile("(?<name>[A-Za-z0-9._-]{1,64})\\s+(?<hash>[0-9a-fA-F]{64})");
    /** How often the file's time is looked at. */
    private static final long LOOK_NANOS = 1_000_000_000L;

    private final Path file;
    private volatile Map<String, byte[]> hashes;
    private volatile FileTime read;
    private volatile long looked = System.nanoTime();

    /**
     * Reads the file.
     *
     * @throws IllegalStateException if it cannot be read, or a line of it is none
     */
    ApiKeys(Path file) {
        this.file = file;
        try {
            read = Files.getLastModifiedTime(file);
            hashes = hashes();
        } catch (IOException e) {
            throw new IllegalStateException("The file of keys " + file + " (orbwright.access.keys) cannot be read.", e);
        }
    }

    /** The name of the key, if it is one; every known key is compared, to the end, whatever the outcome. */
    Optional<String> nameOf(String key) {
        lookAgain();
        byte[] hash = sha256(key);
        String found = null;
        for (Map.Entry<String, byte[]> known : hashes.entrySet()) {
            if (MessageDigest.isEqual(known.getValue(), hash)) {
                found = known.getKey();
            }
        }
        return Optional.ofNullable(found);
    }

    /** A file that is wrong changes nothing: the keys that were read before stay. */
    private void lookAgain() {
        long now = System.nanoTime();
        if (now - looked < LOOK_NANOS) {
            return;
        }
        looked = now;
        try {
            FileTime changed = Files.getLastModifiedTime(file);
            if (!changed.equals(read)) {
                hashes = hashes();
                read = changed;
                Log.infof("Read %d keys from %s", hashes.size(), file);
            }
        } catch (IOException | IllegalStateException e) {
            Log.errorf("The file of keys %s cannot be used, the keys read before stay: %s", file, e.getMessage());
        }
    }

    private Map<String, byte[]> hashes() throws IOException {
        Map<String, byte[]> found = new LinkedHashMap<>();
        int number = 0;
        for (String line : Files.readAllLines(file)) {
            number++;
            String content = line.replaceFirst("#.*", "").strip();
            Matcher parts = LINE.matcher(content);
            if (parts.matches()) {
                found.put(parts.group("name"), HexFormat.of().parseHex(parts.group("hash")));
            } else if (!content.isEmpty()) {
                throw new IllegalStateException("Line " + number + " of the file of keys " + file
                        + " has to be a name, a blank and a SHA-256 of 64 hex digits.");
            }
        }
        return found;
    }

    private static byte[] sha256(String key) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
