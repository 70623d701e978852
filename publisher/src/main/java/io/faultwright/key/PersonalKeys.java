package io.faultwright.key;

import io.faultwright.model.KeySignature;
import io.faultwright.model.SignOff;
import io.faultwright.model.Signer;
import io.faultwright.release.Proof;
import io.faultwright.release.SignatureCheck;
import io.faultwright.release.Statement;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** Signs sign-offs with people's own keys, and verifies such signatures. */
public final class PersonalKeys implements SignatureCheck {
  private final KeyTool ssh;
  private final KeyTool gpg;

  /**
   * Keys as the tools find them.
   *
   * @param environment environment variables of the tools
   */
  public PersonalKeys(Map<String, String> environment) {
    this.ssh = new SshKeys(environment);
    this.gpg = new GpgKeys(environment);
  }

  /**
   * The sign-off with a signature.
   *
   * @param key which of the person's keys: for SSH a file, for GPG what the tool calls it by
   * @throws io.faultwright.output.Refused where the tool is missing or does not sign
   */
  public SignOff sign(SignOff signOff, KeySignature.Format format, String key) throws IOException {
    String text = tool(format).sign(Statement.of(signOff), key);
    return signOff.with(new KeySignature(format, text.strip() + "\n"));
  }

  @Override
  public Proof of(SignOff signOff, Signer signer) {
    KeySignature proof = signOff.proof().orElseThrow();
    try {
      return tool(proof.format()).verify(Statement.of(signOff), proof.text(), signer);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private KeyTool tool(KeySignature.Format format) {
    return format == KeySignature.Format.SSH ? ssh : gpg;
  }
}
