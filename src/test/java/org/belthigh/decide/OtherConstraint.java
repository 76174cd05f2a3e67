package org.belthigh.decide;

import org.drools.model.Constraint;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.drools.model.constraints.AbstractSingleConstraint;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.Predicate2;
import org.drools.model.functions.Predicate3;
import org.drools.model.functions.Predicate4;
import org.drools.model.functions.Predicate5;
import org.drools.model.functions.PredicateInformation;
import org.drools.model.functions.PredicateN;
import org.drools.model.impl.ModelComponent;

/**
 * A constraint over the same variables as another one, with another answer. It has an id of its own
 * and no index, so that Drools shares no node with the one it stands for and asks it each time.
 */
@SuppressWarnings({"rawtypes", "unchecked"})
final class OtherConstraint extends AbstractSingleConstraint {
  private final Variable[] variables;
  private final PredicateN answer;

  /** Asks {@code answer} about what {@code instead} is asked about. */
  OtherConstraint(SingleConstraint instead, String change, PredicateN answer) {
    super(
        instead.getExprId() + " " + change,
        new PredicateInformation(
            instead.predicateInformation().getStringConstraint() + " " + change));
    this.variables = instead.getVariables();
    this.answer = answer;
  }

  @Override
  public Variable[] getVariables() {
    return variables;
  }

  @Override
  public PredicateN getPredicate() {
    return answer;
  }

  @Override
  public Predicate1 getPredicate1() {
    return a -> answer.test(a);
  }

  @Override
  public Predicate2 getPredicate2() {
    return (a, b) -> answer.test(a, b);
  }

  @Override
  public Predicate3 getPredicate3() {
    return (a, b, c) -> answer.test(a, b, c);
  }

  @Override
  public Predicate4 getPredicate4() {
    return (a, b, c, d) -> answer.test(a, b, c, d);
  }

  @Override
  public Predicate5 getPredicate5() {
    return (a, b, c, d, e) -> answer.test(a, b, c, d, e);
  }

  /** Drools asks for it in a {@code forall}. */
  @Override
  public Constraint negate() {
    return new OtherConstraint(this, "not", values -> !answer.test(values));
  }

  @Override
  public Constraint replaceVariable(Variable from, Variable to) {
    throw new UnsupportedOperationException("A changed constraint keeps its variables");
  }

  @Override
  public boolean isEqualTo(ModelComponent other) {
    return this == other;
  }
}
