package org.belthigh.cli;

import java.util.Collection;
import java.util.Set;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.files.Nearest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Rule books that a command line names. */
final class Books {
  private Books() {}

  /**
   * @throws ParameterException if one of {@code ids} is no rule book
   */
  static void refuseUnknown(CommandSpec spec, Catalogue catalogue, Collection<String> ids) {
    Set<String> known = catalogue.ruleBooks().keySet();
    for (String id : ids) {
      if (!known.contains(id)) {
        throw new ParameterException(
            spec.commandLine(),
            "--book must be one of "
                + String.join(", ", known)
                + ", not '"
                + id
                + "'"
                + Nearest.to(id, known).map(near -> "; maybe " + near).orElse(""));
      }
    }
  }
}
