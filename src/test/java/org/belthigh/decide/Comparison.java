package org.belthigh.decide;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.model.AlphaIndex;
import org.drools.model.BetaIndex;
import org.drools.model.Index;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.model.functions.Function1;
import org.drools.model.functions.PredicateN;

/**
 * A constraint that compares two values by their order, such as {@code date > $day}. The two sides
 * are read from its index; one that compares two values of the same fact has none, and is read from
 * its text.
 *
 * @param asked the constraint as it is
 * @param strict {@code true} for {@code <} and {@code >}
 * @param left the side before the sign
 * @param right the side behind it
 */
record Comparison(PredicateN asked, boolean strict, Side left, Side right) {
  private static final Pattern WRITTEN =
      Pattern.compile("([$\\w.()]+)\\s*(<=|>=|<|>)\\s*([$\\w.()]+)");

  /** The scope that Drools adds to the names of variables. */
  private static final String SCOPE = "_\\d+_sCoPe$";

  /** One side, by the values of the constraint's variables. */
  interface Side {
    Object of(Object... values) throws Exception;
  }

  /** Empty where the constraint is no such comparison, or its sides cannot be told. */
  static Optional<Comparison> of(SingleConstraint single) {
    return single.getIndex() == null ? written(single) : indexed(single, single.getIndex());
  }

  private static Optional<Comparison> indexed(SingleConstraint single, Index<?, ?> index) {
    Optional<Side> right = Optional.empty();
    if (index instanceof AlphaIndex<?, ?> alpha) {
      right = Optional.of(values -> alpha.getRightValue());
    } else if (index instanceof BetaIndex<?, ?, ?> beta) {
      right = Optional.of(values -> applied(beta.getRightOperandExtractor(), values[1]));
    }
    if (right.isEmpty() || !index.getConstraintType().isComparison()) {
      return Optional.empty();
    }
    return Optional.of(
        new Comparison(
            single.getPredicate(),
            index.getConstraintType() == Index.ConstraintType.LESS_THAN
                || index.getConstraintType() == Index.ConstraintType.GREATER_THAN,
            values -> applied(index.getLeftOperandExtractor(), values[0]),
            right.get()));
  }

  @SuppressWarnings("unchecked")
  private static <A> Object applied(Function1<A, ?> function, Object value) throws Exception {
    return function.apply((A) value);
  }

  private static Optional<Comparison> written(SingleConstraint single) {
    String text = single.predicateInformation().getStringConstraint();
    Matcher matcher = WRITTEN.matcher(text == null ? "" : text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Optional<Side> left = side(single, matcher.group(1));
    Optional<Side> right = side(single, matcher.group(3));
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    boolean strict = matcher.group(2).length() == 1;
    return Optional.of(new Comparison(single.getPredicate(), strict, left.get(), right.get()));
  }

  /** What is written on one side: a variable, or what the fact says, and what those say. */
  private static Optional<Side> side(SingleConstraint single, String text) {
    List<String> names = List.of(text.replace("()", "").split("\\.", -1));
    List<Variable<?>> variables = Arrays.asList(single.getVariables());
    for (int i = 0; i < variables.size(); i++) {
      if (variables.get(i).getName().replaceFirst(SCOPE, "").equals(names.get(0))) {
        return side(variables.get(i).getType(), i, names.subList(1, names.size()));
      }
    }
    return side(variables.get(0).getType(), 0, names);
  }

  private static Optional<Side> side(Class<?> type, int variable, List<String> names) {
    if (names.isEmpty()) {
      return Optional.of(values -> values[variable]);
    }
    return accessor(type, names.get(0))
        .flatMap(
            first ->
                side(first.getReturnType(), 0, names.subList(1, names.size()))
                    .map(rest -> values -> rest.of(first.invoke(values[variable]))));
  }

  private static Optional<Method> accessor(Class<?> type, String name) {
    String behind = name.isEmpty() ? "" : Character.toUpperCase(name.charAt(0)) + name.substring(1);
    List<String> names = List.of(name, "get" + behind, "is" + behind);
    Optional<Method> found =
        Arrays.stream(type.getMethods())
            .filter(m -> m.getParameterCount() == 0 && names.contains(m.getName()))
            .findFirst();
    found.ifPresent(m -> m.setAccessible(true));
    return found;
  }

  /** The same, but where both sides are alike it says the other: {@code >=} becomes {@code >}. */
  PredicateN borderMoved() {
    return values -> alike(left.of(values), right.of(values)) ? strict : asked.test(values);
  }

  @SuppressWarnings("unchecked")
  private static boolean alike(Object one, Object other) {
    if (one instanceof Number a && other instanceof Number b) {
      return Double.compare(a.doubleValue(), b.doubleValue()) == 0;
    }
    return one instanceof Comparable<?> a
        && one.getClass().isInstance(other)
        && ((Comparable<Object>) a).compareTo(other) == 0;
  }
}
