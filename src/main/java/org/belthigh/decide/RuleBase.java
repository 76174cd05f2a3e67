package org.belthigh.decide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.AgendaEventListener;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.ObjectUpdatedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;

/**
 * The rules of every pack, built into the jar as an executable model, and the one way to run them.
 *
 * <p>Facts go in, verdicts come out; nothing is kept between two runs. The rule base is loaded once
 * and may be shared by threads.
 */
final class RuleBase {
  /** Names the generated model classes, one a line, below a header line. */
  private static final String MODELS = "META-INF/kie/org.belthigh/belthigh/drools-model";

  private static final String HEADER = "Drools-Model-Version:";

  /** Firings per fact after which two rules must be waking each other up for ever. */
  private static final int FIRINGS_PER_FACT = 100;

  private final KieBase rules;

  RuleBase(KieBase rules) {
    this.rules = rules;
  }

  /** The rules of those models, in their order. */
  static RuleBase of(List<Model> models) {
    return new RuleBase(KieBaseBuilder.createKieBaseFromModel(models));
  }

  /** The one rule base, loaded at the first call. */
  static RuleBase shared() {
    return Holder.LOADED;
  }

  /** Loads it and runs it over nothing, so that its classes are there when they are needed. */
  static void warm() {
    shared().fire(List.of());
  }

  private static final class Holder {
    private static final RuleBase LOADED = of(models());
  }

  /** One model a pack, as they were built. */
  static List<Model> models() {
    List<Model> models = new ArrayList<>();
    for (String name : modelNames()) {
      models.add(model(name));
    }
    return models;
  }

  private static List<String> modelNames() {
    try (InputStream in = RuleBase.class.getClassLoader().getResourceAsStream(MODELS)) {
      if (in == null) {
        throw new IllegalStateException(
            "The rules are missing: there is no " + MODELS + " on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty() && !line.startsWith(HEADER))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Model model(String name) {
    try {
      return Class.forName(name).asSubclass(Model.class).getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("The rules are broken: " + name + " cannot be made", e);
    }
  }

  /** Every rule that was loaded, as {@code pack/ID}, such as {@code arm/ARM-001}. */
  SortedSet<String> rules() {
    SortedSet<String> names = new TreeSet<>();
    rules
        .getKiePackages()
        .forEach(
            pack ->
                pack.getRules()
                    .forEach(
                        rule ->
                            names.add(
                                pack.getName().replaceFirst("^rules\\.", "")
                                    + "/"
                                    + rule.getName())));
    return names;
  }

  /**
   * Runs every rule over {@code facts}.
   *
   * @param facts immutable records, inserted in this order
   * @return the verdicts by rule id; those of one rule in the order in which they were reached,
   *     which follows the order of the facts
   * @throws IllegalStateException if the rules do not come to rest
   */
  List<Verdict> fire(List<?> facts) {
    Set<Verdict> standing = new LinkedHashSet<>();
    int limit = FIRINGS_PER_FACT * (facts.size() + 1);
    KieSession session = rules.newKieSession();
    try {
      session.addEventListener(new Collector(standing));
      facts.forEach(session::insert);
      if (session.fireAllRules(limit) >= limit) {
        throw new IllegalStateException(
            "The rules fired " + limit + " times over " + facts.size() + " facts and went on");
      }
    } finally {
      session.dispose();
    }
    return standing.stream().sorted(Comparator.comparing(Verdict::rule)).toList();
  }

  /**
   * What led to all that {@link #fire} concludes, and to what that rests on: a slower run.
   *
   * @return in the order in which it was reached; of a conclusion that several matches lead to, the
   *     first
   */
  List<Because> why(List<?> facts) {
    Map<Object, Because> standing = new LinkedHashMap<>();
    KieSession session = rules.newKieSession();
    try {
      Tracer tracer = new Tracer(standing);
      session.addEventListener((AgendaEventListener) tracer);
      session.addEventListener((RuleRuntimeEventListener) tracer);
      facts.forEach(session::insert);
      session.fireAllRules(FIRINGS_PER_FACT * (facts.size() + 1));
    } finally {
      session.dispose();
    }
    return List.copyOf(standing.values());
  }

  /** Keeps which match of which rule concluded what, as the engine tells it. */
  private static final class Tracer extends DefaultAgendaEventListener
      implements RuleRuntimeEventListener {
    private final Map<Object, Because> standing;
    private Match match;

    Tracer(Map<Object, Because> standing) {
      this.standing = standing;
    }

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
      match = event.getMatch();
    }

    @Override
    public void afterMatchFired(AfterMatchFiredEvent event) {
      match = null;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
      if (match != null) {
        standing.put(
            event.getObject(),
            new Because(match.getRule().getName(), match.getObjects(), event.getObject()));
      }
    }

    @Override
    public void objectUpdated(ObjectUpdatedEvent event) {
      throw new IllegalStateException("A rule changed a fact: " + event.getOldObject());
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
      standing.remove(event.getOldObject());
    }
  }

  /** Keeps what was concluded and not taken back, in the order in which it was reached. */
  private static final class Collector extends DefaultRuleRuntimeEventListener {
    private final Set<Verdict> standing;

    Collector(Set<Verdict> standing) {
      this.standing = standing;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
      if (event.getObject() instanceof Verdict verdict) {
        standing.add(verdict);
      }
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
      if (event.getOldObject() instanceof Verdict verdict) {
        standing.remove(verdict);
      }
    }
  }
}
