package io.faultwright.page;

import java.util.List;

/**
 * A numbered instruction.
 *
 * @param text the instruction
 * @param cautions printed in full before it
 * @param reminders cautions already printed in full before an earlier step of the same list
 */
public record Step(String text, List<CautionPanel> cautions, List<CautionPanel> reminders) {
  public Step {
    cautions = List.copyOf(cautions);
    reminders = List.copyOf(reminders);
  }
}
