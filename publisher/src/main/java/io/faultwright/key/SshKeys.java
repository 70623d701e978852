package io.faultwright.key;

import io.faultwright.model.Signer;
import io.faultwright.output.Refused;
import io.faultwright.output.Scratch;
import io.faultwright.release.Proof;
import io.faultwright.release.Statement;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Signatures of SSH keys, made and verified by {@code ssh-keygen -Y} of OpenSSH. */
final class SshKeys implements KeyTool {
  /** In the file of allowed signers there is one person, under this name. */
  private static final String PERSON = "signer";

  private final Tool tool;

  SshKeys(Map<String, String> environment) {
    this.tool =
        new Tool(
            "ssh-keygen",
            environment,
            "install OpenSSH 8.2 or newer (on Debian, the package openssh-client)");
  }

  @Override
  public String sign(byte[] statement, String key) throws IOException {
    Tool.Result result =
        tool.run(statement, List.of("-Y", "sign", "-q", "-f", key, "-n", Statement.NAMESPACE));
    if (!result.worked() || result.out().isBlank()) {
      throw new Refused(
          "`ssh-keygen` did not sign with `" + key + "`: " + result.complaint(),
          "give the private key with `--ssh-key`, or its public key where an agent holds it");
    }
    return result.out();
  }

  @Override
  public Proof verify(byte[] statement, String signature, Signer signer) throws IOException {
    try (Scratch scratch = Scratch.create()) {
      Path allowed = scratch.write("allowed-signers", utf8(allowed(signer)));
      Path signed = scratch.write("signature", utf8(signature));
      Tool.Result result =
          tool.run(
              statement,
              List.of(
                  "-Y",
                  "verify",
                  "-f",
                  allowed.toString(),
                  "-I",
                  PERSON,
                  "-n",
                  Statement.NAMESPACE,
                  "-s",
                  signed.toString()));
      return result.worked()
          ? Proof.VERIFIED
          : Proof.broken("`ssh-keygen` says: " + result.complaint());
    }
  }

  private static String allowed(Signer signer) {
    return signer.ssh().stream()
        .map(key -> PERSON + " namespaces=\"" + Statement.NAMESPACE + "\" " + key + "\n")
        .collect(Collectors.joining());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
