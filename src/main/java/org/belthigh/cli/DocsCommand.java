package org.belthigh.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.belthigh.catalogue.CatalogueLoader;
import org.belthigh.docs.ReferencePages;
import org.belthigh.files.Output;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code belthigh docs}: for whoever works on the tool. */
@Command(
    name = "docs",
    hidden = true,
    mixinStandardHelpOptions = true,
    description = "Writes the pages of docs/ that come from the catalogue.")
final class DocsCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "DIR", description = "Where to.")
  private Path folder;

  @Override
  public Integer call() throws IOException {
    try (Output output = Output.ofPages(folder)) {
      ReferencePages.of(CatalogueLoader.load().orThrow())
          .forEach((name, text) -> output.put(name, text.getBytes(StandardCharsets.UTF_8)));
      output.commit();
    }
    return Belthigh.OK;
  }
}
