package io.faultwright.measure;

import static org.drools.model.DSL.annotationValue;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;
import static org.drools.model.PatternDSL.typeMetaData;

import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.drools.model.Rule.Attribute;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieServices;
import org.kie.api.conf.EventProcessingOption;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionConfiguration;
import org.kie.api.runtime.conf.ClockTypeOption;
import org.kie.api.runtime.rule.FactHandle;
import org.kie.api.time.SessionPseudoClock;

/**
 * The heating cycle of the tests on software 2.10 as rules in Drools: events as events, times as
 * timers of rules, a clock that is set. The clock stands a millisecond before the step while events
 * come, so that they go ahead of what is due at it.
 */
final class HeatingRules {
  private static final String PACKAGE = "io.faultwright.measure.heating";
  private static final long MILLIS = 1000;
  private static final long[] LASTS = {0, 60, 360, 25, 600, 0, 0, 240};
  private static final int MOST = 3;

  /** The phase it is in. */
  public record Phase(int number) {}

  /** Something that happens. */
  public record Happened(int input, int state) {}

  /** The states of the inputs. */
  public record States(boolean call, boolean open) {}

  private final ModelImpl model = new ModelImpl();
  private final KieSession session;
  private final SessionPseudoClock clock;
  private FactHandle phase;
  private FactHandle states;
  private States now = new States(false, false);
  private long due = Long.MAX_VALUE;
  private int longHeats;
  private long phases;
  private long stops;
  private int rules;

  HeatingRules() {
    model.addTypeMetaData(
        typeMetaData(Happened.class).addAnnotation("role", annotationValue("value", "event")));
    happens(HeatingByHand.HEATING, HeatingEvents.SWITCH, 1, HeatingByHand.RELEASING);
    happens(HeatingByHand.RELEASING, HeatingEvents.SWITCH, 0, HeatingByHand.BUILDING);
    happens(HeatingByHand.LONG_STOP, HeatingEvents.RESET, -1, HeatingByHand.RESTART);
    stands(HeatingByHand.STANDBY, States::call, HeatingByHand.DRAINING);
    stands(HeatingByHand.BUILDING, one -> !one.call(), HeatingByHand.STANDBY);
    stands(HeatingByHand.FULL_STOP, one -> !one.open(), HeatingByHand.RESTART);
    over(HeatingByHand.DRAINING, HeatingByHand.HEATING);
    over(HeatingByHand.HEATING, HeatingByHand.BUILDING);
    over(HeatingByHand.RELEASING, HeatingByHand.FULL_STOP);
    over(HeatingByHand.BUILDING, HeatingByHand.DRAINING);
    over(HeatingByHand.RESTART, HeatingByHand.STANDBY);
    KieSessionConfiguration set = KieServices.get().newKieSessionConfiguration();
    set.setOption(ClockTypeOption.PSEUDO);
    session =
        KieBaseBuilder.createKieBaseFromModel(model, EventProcessingOption.STREAM)
            .newKieSession(set, null);
    clock = session.getSessionClock();
    states = session.insert(now);
    enter(HeatingByHand.STANDBY);
  }

  private void happens(int from, int input, int state, int to) {
    Variable<Phase> in = declarationOf(Phase.class);
    Variable<Happened> event = declarationOf(Happened.class);
    model.addRule(
        rule(PACKAGE, "rule " + rules++)
            .attribute(Attribute.SALIENCE, 10)
            .build(
                pattern(in).expr("phase" + from, one -> one.number() == from),
                pattern(event)
                    .expr(
                        "event" + input + state,
                        one -> one.input() == input && one.state() == state),
                on(in, event).execute((drools, one, other) -> turned(from, to))));
  }

  private void stands(int from, Predicate<States> holds, int to) {
    Variable<Phase> in = declarationOf(Phase.class);
    Variable<States> inputs = declarationOf(States.class);
    model.addRule(
        rule(PACKAGE, "rule " + rules++)
            .build(
                pattern(in).expr("phase" + from, one -> one.number() == from),
                pattern(inputs).expr("states of " + from, holds::test),
                on(in, inputs).execute((drools, one, other) -> enter(to))));
  }

  private void over(int from, int to) {
    Variable<Phase> in = declarationOf(Phase.class);
    model.addRule(
        rule(PACKAGE, "rule " + rules++)
            .attribute(Attribute.TIMER, "int: " + (LASTS[from] * MILLIS + 1) + "ms")
            .build(
                pattern(in).expr("phase" + from, one -> one.number() == from),
                on(in).execute((drools, one) -> ranOut(from, to))));
  }

  private void turned(int from, int to) {
    if (from == HeatingByHand.RELEASING || from == HeatingByHand.LONG_STOP) {
      longHeats = 0;
    }
    enter(to);
  }

  private void ranOut(int from, int to) {
    boolean most = from == HeatingByHand.HEATING && ++longHeats >= MOST;
    enter(most ? HeatingByHand.LONG_STOP : to);
  }

  private void enter(int next) {
    if (phase != null) {
      session.delete(phase);
    }
    phase = session.insert(new Phase(next));
    phases++;
    stops += next == HeatingByHand.FULL_STOP || next == HeatingByHand.LONG_STOP ? 1 : 0;
    due = LASTS[next] == 0 ? Long.MAX_VALUE : clock.getCurrentTime() + LASTS[next] * MILLIS + 1;
  }

  /** Something happens; everything that was due before follows first. */
  void happen(long step, int input, int state) {
    passTo(step * MILLIS - 1);
    States before = now;
    now =
        switch (input) {
          case HeatingEvents.CALL -> new States(state == 1, now.open());
          case HeatingEvents.SWITCH -> new States(now.call(), state == 1);
          default -> now;
        };
    if (before != now) {
      session.update(states, now);
    }
    FactHandle event = session.insert(new Happened(input, state));
    session.fireAllRules();
    session.delete(event);
  }

  private void passTo(long millis) {
    while (due <= millis) {
      advance(due);
      session.fireAllRules();
    }
    advance(millis);
    session.fireAllRules();
  }

  private void advance(long millis) {
    clock.advanceTime(Math.max(0, millis - clock.getCurrentTime()), TimeUnit.MILLISECONDS);
  }

  long phases() {
    return phases;
  }

  long stops() {
    return stops;
  }

  void end() {
    session.fireAllRules();
    session.dispose();
  }
}
