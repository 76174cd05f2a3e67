package org.belthigh.decide;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.drools.model.Binding;
import org.drools.model.Condition;
import org.drools.model.Consequence;
import org.drools.model.Constraint;
import org.drools.model.GroupByPattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.model.functions.accumulate.AccumulateFunction;
import org.drools.model.patterns.AccumulatePatternImpl;
import org.drools.model.patterns.EvalImpl;
import org.drools.model.patterns.PatternImpl;

/**
 * Which variables a rule binds and asks for, one of its parts left out. What is asked of the result
 * of an accumulate stands behind it as a pattern of its own, which binds nothing.
 */
@SuppressWarnings("rawtypes")
final class RuleVariables {
  private final Set<Variable> bound = new HashSet<>();
  private final Set<Variable> asked = new HashSet<>();
  private final Set<Variable> results = new HashSet<>();
  private final Condition leftOut;

  private RuleVariables(Condition leftOut) {
    this.leftOut = leftOut;
  }

  /** Whether {@code rule} binds all that it asks for when {@code part} is gone. */
  static boolean doesWithout(Rule rule, Condition part) {
    RuleVariables rest = new RuleVariables(part);
    rest.results(rule.getView());
    rest.condition(rule.getView());
    for (Consequence consequence : rule.getConsequences().values()) {
      rest.asked.addAll(Arrays.asList(consequence.getVariables()));
    }
    return rest.bound.containsAll(rest.asked);
  }

  private void results(Condition condition) {
    if (condition instanceof AccumulatePatternImpl<?> sum) {
      results(sum.getCondition());
      for (AccumulateFunction function : sum.getAccumulateFunctions()) {
        results.add(function.getResult());
      }
    }
    condition.getSubConditions().forEach(this::results);
  }

  private void condition(Condition condition) {
    if (condition == leftOut) {
      return;
    }
    if (condition instanceof AccumulatePatternImpl<?> sum) {
      condition(sum.getCondition());
      accumulate(sum);
    } else if (condition instanceof PatternImpl<?> pattern) {
      pattern(pattern);
    } else if (condition instanceof EvalImpl eval) {
      constraint(eval.getExpr());
    } else {
      condition.getSubConditions().forEach(this::condition);
    }
  }

  private void pattern(PatternImpl<?> pattern) {
    if (!results.contains(pattern.getPatternVariable())) {
      bound.add(pattern.getPatternVariable());
    }
    for (Binding binding : pattern.getBindings()) {
      bound.add(binding.getBoundVariable());
      asked.addAll(Arrays.asList(binding.getInputVariables()));
    }
    constraint(pattern.getConstraint());
  }

  private void accumulate(AccumulatePatternImpl<?> sum) {
    for (AccumulateFunction function : sum.getAccumulateFunctions()) {
      bound.add(function.getResult());
      if (function.getExternalVars() != null) {
        asked.addAll(Arrays.asList(function.getExternalVars()));
      }
      if (function.getSource() instanceof Variable source) {
        asked.add(source);
      }
    }
    if (sum instanceof GroupByPattern<?, ?> group) {
      bound.add(group.getVarKey());
      asked.addAll(Arrays.asList(group.getVars()));
    }
  }

  private void constraint(Constraint constraint) {
    if (constraint instanceof SingleConstraint single) {
      asked.addAll(Arrays.asList(single.getVariables()));
    }
    constraint.getChildren().forEach(this::constraint);
  }
}
