package io.faultwright.key;

import io.faultwright.model.Signer;
import io.faultwright.output.Refused;
import io.faultwright.output.Scratch;
import io.faultwright.release.Proof;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Signatures of OpenPGP keys, made and verified by GnuPG. Whether a key has expired by now does not
 * matter to what it signed before; a revoked key does not count.
 */
final class GpgKeys implements KeyTool {
  private static final List<String> AGAINST =
      List.of("BADSIG", "ERRSIG", "REVKEYSIG", "NO_PUBKEY", "NODATA");

  private final Tool tool;

  GpgKeys(Map<String, String> environment) {
    this.tool = new Tool("gpg", environment, "install GnuPG (on Debian, the package gpg)");
  }

  @Override
  public String sign(byte[] statement, String key) throws IOException {
    Tool.Result result =
        tool.run(
            statement,
            List.of("--quiet", "--armor", "--detach-sign", "--output", "-", "--local-user", key));
    if (!result.worked() || result.out().isBlank()) {
      throw new Refused(
          "`gpg` did not sign with `" + key + "`: " + result.complaint(),
          "`gpg --list-secret-keys` shows the keys there are");
    }
    return result.out();
  }

  @Override
  public Proof verify(byte[] statement, String signature, Signer signer) throws IOException {
    try (Scratch scratch = Scratch.create()) {
      Path keys = scratch.write("keys.asc", utf8(String.join("\n", signer.gpg()) + "\n"));
      Path signed = scratch.write("signature.asc", utf8(signature));
      Path stated = scratch.write("statement", statement);
      run(scratch, "--quiet", "--import", keys.toString());
      Tool.Result result =
          run(scratch, "--status-fd", "1", "--verify", signed.toString(), stated.toString());
      return isGood(result)
          ? Proof.VERIFIED
          : Proof.broken(
              "`gpg` says: " + new Tool.Result(result.code(), "", result.err()).complaint());
    }
  }

  /** In a home of its own: nobody's key ring is touched or believed. */
  private Tool.Result run(Scratch home, String... arguments) throws IOException {
    List<String> apart =
        List.of("--homedir", home.folder().toString(), "--batch", "--no-options", "--no-autostart");
    return tool.run(new byte[0], Stream.concat(apart.stream(), Stream.of(arguments)).toList());
  }

  private static boolean isGood(Tool.Result result) {
    List<String> status =
        result
            .out()
            .lines()
            .filter(line -> line.startsWith("[GNUPG:] "))
            .map(line -> line.split(" ")[1])
            .toList();
    return status.contains("VALIDSIG") && AGAINST.stream().noneMatch(status::contains);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
