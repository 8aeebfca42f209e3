package org.orbwright.api.guard;

import io.quarkus.logging.Log;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hashed keys in a file, a line each: a name, a blank, and the key's SHA-256 as 64 hex digits; {@code #} begins a
 * comment. Keys are meant to be random (32 bytes, say), for which a plain hash is enough: a slow one protects what
 * people choose. A name may have several keys, so that a new one can be handed out before the old one is withdrawn. The
 * file is read again when it changes, so that keys can be added and withdrawn while the service runs.
 */
final class ApiKeys {
    private static final Pattern LINE = Pattern.compile("(?<name>[A-Za-z0-9._-]{1,64})\\s+(?<hash>[0-9a-fA-F]{64})");
    /** How often the file's time is looked at. */
    private static final long LOOK_NANOS = 1_000_000_000L;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final Path file;
    /** Names with the hashes of their keys. */
    private volatile List<Map.Entry<String, byte[]>> known;

    private volatile Version read;
    private volatile long looked = System.nanoTime();

    /** What tells a changed file: a copy may keep the time of its original. */
    private record Version(FileTime time, long size) {
        /** Of a file that is not there, or cannot be looked at. */
        static final Version NONE = new Version(FileTime.fromMillis(0), -1);

        static Version of(Path file) throws IOException {
            return new Version(Files.getLastModifiedTime(file), Files.size(file));
        }
    }

    /**
     * Reads the file.
     *
     * @throws IllegalStateException if it cannot be read, or a line of it is none
     */
    ApiKeys(Path file) {
        this.file = file;
        try {
            read = Version.of(file);
            known = keys();
            warnOfWriters();
        } catch (IOException e) {
            throw new IllegalStateException("The file of keys " + file + " (orbwright.access.keys) cannot be read.", e);
        }
    }

    /** The name of the key, if it is one; every known key is compared, to the end, whatever the outcome. */
    Optional<String> nameOf(String key) {
        lookAgain();
        byte[] hash = sha256(key);
        String found = null;
        for (Map.Entry<String, byte[]> each : known) {
            if (MessageDigest.isEqual(each.getValue(), hash)) {
                found = each.getKey();
            }
        }
        return Optional.ofNullable(found);
    }

    /**
     * A file that is wrong or missing changes nothing, which is said once: the keys that were read before stay. A file
     * is missing for a moment when another one takes its place.
     */
    private void lookAgain() {
        long now = System.nanoTime();
        if (now - looked < LOOK_NANOS) {
            return;
        }
        looked = now;
        try {
            Version changed = Version.of(file);
            if (!changed.equals(read)) {
                read = changed;
                known = keys();
                Log.infof("Read %d keys from %s", known.size(), file);
                warnOfWriters();
            }
        } catch (NoSuchFileException e) {
            if (!read.equals(Version.NONE)) {
                read = Version.NONE;
                Log.errorf("The file of keys %s is missing, the keys read before stay until it is back.", file);
            }
        } catch (IOException | IllegalStateException e) {
            Log.errorf("The file of keys %s cannot be used, the keys read before stay: %s", file, e.getMessage());
        }
    }

    /** Whoever may write the file lets in whom he likes. Only some systems tell. */
    private void warnOfWriters() throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null && view.readAttributes().permissions().contains(PosixFilePermission.OTHERS_WRITE)) {
            Log.warnf("Everybody on this machine may write the file of keys %s; take that right away.", file);
        }
    }

    private List<Map.Entry<String, byte[]>> keys() throws IOException {
        List<Map.Entry<String, byte[]>> found = new ArrayList<>();
        int number = 0;
        for (String line : lines()) {
            number++;
            String content = line.replaceFirst("#.*", "").strip();
            Matcher parts = LINE.matcher(content);
            if (parts.matches()) {
                found.add(Map.entry(parts.group("name"), HexFormat.of().parseHex(parts.group("hash"))));
            } else if (!content.isEmpty()) {
                throw new IllegalStateException("Line " + number + " of the file of keys " + file
                        + " has to be a name, a blank and a SHA-256 of 64 hex digits.");
            }
        }
        return found;
    }

    private List<String> lines() throws IOException {
        try {
            String text = Files.readString(file);
            return (text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text)
                    .lines()
                    .toList();
        } catch (CharacterCodingException e) {
            throw new IllegalStateException("The file of keys " + file + " has to be text in UTF-8.", e);
        }
    }

    private static byte[] sha256(String key) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
