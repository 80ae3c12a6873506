package saddlewright.desktop.safekeeping;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import saddlewright.casefile.json.CaseCodec;

/** The SHA-256 of what a file holds: two with the same hold the same. */
final class Digest {
  private Digest() {}

  /** Of a file; empty where there is none that can be read. */
  static Optional<String> of(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(of(in.readNBytes(CaseCodec.MAX_BYTES + 1)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      // Every Java platform has SHA-256.
      throw new IllegalStateException(e);
    }
  }
}
