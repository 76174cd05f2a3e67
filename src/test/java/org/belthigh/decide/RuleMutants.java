package org.belthigh.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.GroupByPattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.consequences.NamedConsequenceImpl;
import org.drools.model.constraints.AbstractSingleConstraint;
import org.drools.model.impl.DeclarationImpl;
import org.drools.model.impl.RuleImpl;
import org.drools.model.patterns.AccumulatePatternImpl;
import org.drools.model.patterns.CompositePatterns;
import org.drools.model.patterns.EvalImpl;
import org.drools.model.patterns.ExistentialPatternImpl;
import org.drools.model.patterns.GroupByPatternImpl;
import org.drools.model.patterns.PatternImpl;

/**
 * The small mistakes that can be made in one rule, each as a changed copy of it: a constraint is
 * dropped or turned into its opposite, the border of a comparison is moved, a whole part is dropped
 * where the rest can do without it, {@code not} and {@code exists} are changed over, and the rule
 * is removed.
 *
 * <p>The rule is changed as the object that Drools makes its network from; nothing is compiled. A
 * copy shares what was not changed with its original, and Drools keeps things in both while it
 * builds, so of the copies of one object only one may be built into a rule base. Attributes other
 * than the name are not copied: no rule has any.
 */
final class RuleMutants {
  /** A part of the left side with one mistake in it. */
  private record Made(RuleMutant.Kind kind, String where, Condition made) {
    Made inside(Condition whole) {
      return new Made(kind, where, whole);
    }
  }

  private final Rule rule;
  private int patterns;

  private RuleMutants(Rule rule) {
    this.rule = rule;
  }

  /** All of them, in the order of the rule's parts; the removed rule is the last. */
  static List<RuleMutant> of(Rule rule) {
    RuleMutants mutants = new RuleMutants(rule);
    List<RuleMutant> all = new ArrayList<>();
    for (Made made : mutants.condition(rule.getView(), "")) {
      all.add(new RuleMutant(made.kind(), made.where(), Optional.of(mutants.copy(made.made()))));
    }
    all.add(new RuleMutant(RuleMutant.Kind.RULE_REMOVED, "", Optional.empty()));
    return all;
  }

  private Rule copy(Condition view) {
    return new RuleImpl(
        rule.getPackage(),
        rule.getName(),
        rule.getUnit(),
        (CompositePatterns) view,
        Map.of(),
        rule.getMetaData());
  }

  /** {@code within} says what stands around the part, such as {@code not }. */
  private List<Made> condition(Condition part, String within) {
    if (part instanceof CompositePatterns group) {
      return group(group, within + (part.getType() == Condition.Type.OR ? "or " : ""));
    } else if (part instanceof ExistentialPatternImpl existential) {
      return existential(existential, within);
    } else if (part instanceof AccumulatePatternImpl<?> sum) {
      return sum(sum, within);
    } else if (part instanceof PatternImpl<?> pattern) {
      return pattern(pattern, within);
    } else if (part instanceof EvalImpl eval) {
      return eval(eval, within);
    } else if (part instanceof NamedConsequenceImpl) {
      return List.of();
    }
    throw new UnsupportedOperationException(
        rule.getName() + ": no mistakes are known for a " + part.getClass().getSimpleName());
  }

  private List<Made> group(CompositePatterns group, String within) {
    List<Condition> parts = group.getSubConditions();
    long conditions = parts.stream().filter(p -> !(p instanceof NamedConsequenceImpl)).count();
    List<Made> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Condition part = parts.get(i);
      String name = name(part, within);
      for (Made made : condition(part, within)) {
        all.add(made.inside(with(group, i, Optional.of(made.made()))));
      }
      if (droppable(part) && (conditions > 1 || group == rule.getView())) {
        all.add(new Made(RuleMutant.Kind.PART_DROPPED, name, with(group, i, Optional.empty())));
      }
    }
    return all;
  }

  private boolean droppable(Condition part) {
    return !(part instanceof NamedConsequenceImpl) && RuleVariables.doesWithout(rule, part);
  }

  /** The whole left side stays a group; any other group of one is that one. */
  private Condition with(CompositePatterns group, int index, Optional<Condition> other) {
    List<Condition> parts = new ArrayList<>(group.getSubConditions());
    parts.remove(index);
    other.ifPresent(o -> parts.add(index, o));
    if (group == rule.getView()) {
      return new CompositePatterns(group.getType(), parts, group.getConsequences());
    }
    return parts.size() == 1 ? parts.get(0) : new CompositePatterns(group.getType(), parts);
  }

  private List<Made> existential(ExistentialPatternImpl existential, String within) {
    Condition inner = existential.getSubConditions().get(0);
    Condition.Type type = existential.getType();
    String name = name(existential, within);
    List<Made> all = new ArrayList<>();
    for (Made made : condition(inner, within + word(type))) {
      all.add(made.inside(new ExistentialPatternImpl(made.made(), type)));
    }
    if (type == Condition.Type.NOT || type == Condition.Type.EXISTS) {
      Condition.Type other =
          type == Condition.Type.NOT ? Condition.Type.EXISTS : Condition.Type.NOT;
      all.add(
          new Made(RuleMutant.Kind.NOT_AND_EXISTS, name, new ExistentialPatternImpl(inner, other)));
    }
    return all;
  }

  private static String word(Condition.Type type) {
    return type.name().toLowerCase(Locale.ROOT) + " ";
  }

  private List<Made> sum(AccumulatePatternImpl<?> sum, String within) {
    List<Made> all = new ArrayList<>();
    for (Made made : condition(sum.getCondition(), within + "accumulate ")) {
      all.add(made.inside(over(made.made(), sum)));
    }
    return all;
  }

  private static Condition over(Condition condition, AccumulatePatternImpl<?> sum) {
    if (sum instanceof GroupByPattern<?, ?> group) {
      return new GroupByPatternImpl<>(
          condition,
          group.getVars(),
          group.getVarKey(),
          group.getGroupingFunction(),
          sum.getAccumulateFunctions());
    }
    return new AccumulatePatternImpl<>(condition, null, sum.getAccumulateFunctions());
  }

  private List<Made> pattern(PatternImpl<?> pattern, String within) {
    if (pattern.getPatternVariable() instanceof DeclarationImpl<?> d && d.getSource() != null) {
      throw new UnsupportedOperationException(rule.getName() + ": no mistakes are known for from");
    }
    String name = name(pattern, within);
    patterns++;
    List<Made> all = new ArrayList<>();
    for (ConstraintMutants.Made made : ConstraintMutants.of(pattern.getConstraint())) {
      all.add(
          new Made(
              made.kind(),
              name + ", constraint " + made.where(),
              copy(pattern, made.made().orElse(SingleConstraint.TRUE))));
    }
    return all;
  }

  private static <T> Condition copy(PatternImpl<T> pattern, Constraint constraint) {
    PatternImpl<T> copy =
        new PatternImpl<>(
            pattern.getPatternVariable(),
            constraint,
            new ArrayList<>(pattern.getBindings()),
            pattern.getType());
    copy.addWatchedProps(pattern.getWatchedProps());
    copy.setPassive(pattern.isPassive());
    return copy;
  }

  private List<Made> eval(EvalImpl eval, String within) {
    List<Made> all = new ArrayList<>();
    for (ConstraintMutants.Made made : ConstraintMutants.of(eval.getExpr())) {
      made.made()
          .filter(AbstractSingleConstraint.class::isInstance)
          .ifPresent(
              other ->
                  all.add(
                      new Made(
                          made.kind(),
                          name(eval, within) + ", constraint " + made.where(),
                          new EvalImpl((SingleConstraint) other))));
    }
    return all;
  }

  /** Such as {@code pattern 2 not Clearance}; a group stands by the number of its first pattern. */
  private String name(Condition part, String within) {
    return (part instanceof EvalImpl ? "eval behind pattern %d %s%s" : "pattern %d %s%s")
        .formatted(part instanceof EvalImpl ? patterns : patterns + 1, within, words(part));
  }

  /** Such as {@code not (Clearance and MayEnd)}. */
  private static String words(Condition part) {
    if (part instanceof AccumulatePatternImpl<?> sum) {
      return "accumulate (" + words(sum.getCondition()) + ")";
    } else if (part instanceof PatternImpl<?> pattern) {
      return pattern.getPatternVariable().getType().getSimpleName();
    } else if (part instanceof EvalImpl eval) {
      return eval.getExpr().predicateInformation().getStringConstraint();
    }
    List<String> parts = part.getSubConditions().stream().map(RuleMutants::words).toList();
    return part instanceof ExistentialPatternImpl
        ? word(part.getType()) + "(" + String.join(" and ", parts) + ")"
        : String.join(" " + word(part.getType()), parts);
  }
}
