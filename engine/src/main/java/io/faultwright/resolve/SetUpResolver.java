package io.faultwright.resolve;

import io.faultwright.model.SetUp;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the section {@code set-ups}. */
final class SetUpResolver {
  private static final List<String> KEYS = List.of("title", MinutesResolver.MINUTES, "access");

  private final Context context;
  private final AccessResolver access;
  private final MinutesResolver minutes;

  SetUpResolver(Context context) {
    this.context = context;
    this.access = new AccessResolver(context.problems());
    this.minutes = new MinutesResolver(context);
  }

  SortedMap<String, SetUp> resolveAll() {
    SortedMap<String, SetUp> setUps = new TreeMap<>();
    context.outline().of(Kind.SET_UP).forEach((id, one) -> setUps.put(id, resolve(one)));
    return setUps;
  }

  private SetUp resolve(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    return new SetUp(
        definition.id(),
        definition.place(),
        fields.requireText("title"),
        fields
            .requireScalar(MinutesResolver.MINUTES)
            .flatMap(minutes::read)
            .orElse(BigFraction.ONE),
        access.of(fields));
  }
}
