package org.belthigh.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.model.Constraint;
import org.drools.model.SingleConstraint;
import org.drools.model.constraints.AndConstraints;
import org.drools.model.constraints.MultipleConstraints;
import org.drools.model.constraints.OrConstraints;
import org.drools.model.functions.PredicateN;

/** The small mistakes that can be made in the constraints of one pattern. */
final class ConstraintMutants {
  /**
   * The constraints of a pattern with one mistake in them.
   *
   * @param where the number of the constraint in its pattern, from 1, and how it is written
   * @param made empty where none is left
   */
  record Made(RuleMutant.Kind kind, String where, Optional<Constraint> made) {}

  private int number;

  private ConstraintMutants() {}

  /** All of them, in the order of the constraints. */
  static List<Made> of(Constraint constraint) {
    return new ConstraintMutants().made(constraint);
  }

  private List<Made> made(Constraint constraint) {
    if (constraint instanceof SingleConstraint single) {
      return single.getVariables().length == 0 ? List.of() : single(single);
    }
    List<Made> all = new ArrayList<>();
    for (int i = 0; i < constraint.getChildren().size(); i++) {
      for (Made child : made(constraint.getChildren().get(i))) {
        all.add(new Made(child.kind(), child.where(), with(constraint, i, child.made())));
      }
    }
    return all;
  }

  private List<Made> single(SingleConstraint single) {
    number++;
    String where = number + ": " + written(single);
    boolean join = single.getVariables().length > 1;
    List<Made> all = new ArrayList<>();
    all.add(
        new Made(
            join ? RuleMutant.Kind.JOIN_LOOSENED : RuleMutant.Kind.CONDITION_DROPPED,
            where,
            Optional.empty()));
    if (!single.isTemporal()) {
      PredicateN asked = single.getPredicate();
      PredicateN opposite = values -> !asked.test(values);
      all.add(changed(RuleMutant.Kind.TURNED, where, single, opposite));
      Comparison.of(single)
          .map(Comparison::borderMoved)
          .ifPresent(moved -> all.add(changed(RuleMutant.Kind.BORDER_MOVED, where, single, moved)));
    }
    return all;
  }

  private static Made changed(
      RuleMutant.Kind kind, String where, SingleConstraint single, PredicateN answer) {
    return new Made(kind, where, Optional.of(new OtherConstraint(single, kind.name(), answer)));
  }

  /**
   * Its text; within a groupby Drools keeps none, and what it knows of the constraint stands for
   * it.
   */
  private static String written(SingleConstraint single) {
    String text = single.predicateInformation().getStringConstraint();
    return text == null || text.isEmpty()
        ? Stream.of(single.getVariables()).map(v -> v.getName()).collect(Collectors.joining(", "))
            + (single.getIndex() == null ? "" : ", " + single.getIndex().getConstraintType())
        : text;
  }

  private static Optional<Constraint> with(Constraint all, int index, Optional<Constraint> other) {
    List<Constraint> children = new ArrayList<>(all.getChildren());
    children.remove(index);
    other.ifPresent(o -> children.add(index, o));
    if (children.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        switch (all.getType()) {
          case OR -> new OrConstraints(children);
          case AND -> new AndConstraints(children);
          case MULTIPLE -> new MultipleConstraints(children);
          case SINGLE -> throw new IllegalStateException(all + " has parts and is single");
        });
  }
}
