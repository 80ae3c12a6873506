package saddlewright.casefile.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import saddlewright.casefile.Case;
import saddlewright.casefile.order.PrescriptionDetails;
import saddlewright.dentition.Arch;

/**
 * A fingerprint of content: the first sixteen hexadecimal digits of the SHA-256 (FIPS 180-4) of its
 * JSON. Two states with the same fingerprint say the same.
 */
public final class Fingerprint {
  private static final int DIGITS = 16;

  private Fingerprint() {}

  /** Of all that a prescription of the case says; what has been issued before is no part of it. */
  public static String of(Case c) {
    Case content = c.with(c.prescription().withIssued(List.of()));
    return digest(CaseCodec.toBytes(content));
  }

  /**
   * Of what a signature stands for: charts and designs of both arches. Names, dates and materials
   * may change without it.
   */
  public static String ofDesign(Case c) {
    ObjectNode bare = CaseCodec.tree(c.with(PrescriptionDetails.EMPTY));
    ObjectNode arches = bare.objectNode();
    for (Arch arch : Arch.values()) {
      Optional.ofNullable(bare.get(arch.code())).ifPresent(a -> arches.set(arch.code(), a));
    }
    return digest(JsonText.compact(arches).getBytes(StandardCharsets.UTF_8));
  }

  private static String digest(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(hash).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException e) {
      // Every Java platform has SHA-256.
      throw new IllegalStateException(e);
    }
  }
}
