package io.faultwright.compile;

import io.faultwright.model.Condition;
import io.faultwright.model.Situation;
import io.faultwright.model.Truth;
import io.faultwright.model.Value;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A situation in a symptom, and what the rules decided about it. Used by one thread, for one run.
 */
public final class Facts {
  private final Situation situation;
  private final Machine machine;
  private final SymptomProgram program;
  private final Truth[] asked;
  private final Truth[] decided;
  private boolean doubt;

  Facts(Situation situation, Machine machine, SymptomProgram program) {
    this.situation = situation;
    this.machine = machine;
    this.program = program;
    this.asked = new Truth[program.tests().size()];
    this.decided = new Truth[program.statements().size()];
  }

  public Situation situation() {
    return situation;
  }

  public Candidates candidates() {
    return machine.candidates();
  }

  /** What was observed for a reading; absent where it is not known yet. */
  public Optional<Value> value(String reading) {
    return Optional.ofNullable(situation.readings().get(reading));
  }

  /** As {@link #value}, without a wrapper around it; null where it is not known yet. */
  Value known(String reading) {
    return situation.readings().get(reading);
  }

  /** The choice observed for a reading; absent where there is none. */
  public Optional<String> word(String reading) {
    return situation.readings().get(reading) instanceof Value.Word word
        ? Optional.of(word.id())
        : Optional.empty();
  }

  /** The number observed for a reading; absent where there is none. */
  public Optional<BigFraction> amount(String reading) {
    return situation.readings().get(reading) instanceof Value.Number number
        ? Optional.of(number.amount())
        : Optional.empty();
  }

  /**
   * Whether a condition of the symptom comes out as wanted. A test on a reading that the machine
   * does not have never does.
   */
  public Truth met(Condition condition, Truth wanted) {
    boolean positive = wanted == Truth.TRUE;
    return condition.match(
        all -> met(all.parts(), wanted, positive),
        any -> met(any.parts(), wanted, !positive),
        not -> met(not.part(), wanted.not()),
        test -> met(program.tests().number(test), wanted));
  }

  private Truth met(List<Condition> parts, Truth wanted, boolean every) {
    Stream<Truth> each = parts.stream().map(part -> met(part, wanted));
    return every ? each.reduce(Truth.TRUE, Truth::and) : each.reduce(Truth.FALSE, Truth::or);
  }

  private Truth met(int test, Truth wanted) {
    if (!exists(test)) {
      return Truth.FALSE;
    }
    return wanted == Truth.TRUE ? truth(test) : truth(test).not();
  }

  Truth truth(int test) {
    if (asked[test] == null) {
      asked[test] = program.tests().probe(test).of(this);
      doubt |= asked[test] == Truth.UNKNOWN;
    }
    return asked[test];
  }

  /** Whether the machine has, or may have, the reading of a test and the one its limits follow. */
  public boolean exists(Condition.Test test) {
    return exists(program.tests().number(test));
  }

  boolean exists(int test) {
    return machine.exists(test);
  }

  /** Whether a test asked so far is unknown. */
  public boolean inDoubt() {
    return doubt;
  }

  /** What the rules decided about a statement, by its position in the symptom. */
  public Truth decided(int statement) {
    return decided[statement] == null ? Truth.FALSE : decided[statement];
  }

  void decide(int statement, Truth truth) {
    if (decided(statement).compareTo(truth) < 0) {
      decided[statement] = truth;
    }
  }
}
