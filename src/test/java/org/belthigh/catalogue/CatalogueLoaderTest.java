package org.belthigh.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CatalogueLoaderTest {
  @Test
  void what_travels_with_the_program_has_no_fault() {
    assertThat(CatalogueLoader.load().problems()).extracting(p -> p.text()).isEmpty();
  }
}
