package example.torquearm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.Bar;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.LinkageContract;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

class PlainTorqueArmTest {
  private static final PlainTorqueArm LINKAGE = new PlainTorqueArm();

  private static Catalog catalog() throws IOException {
    Path standard = Path.of(System.getProperty("trammel.kit"), "catalogs", "standard");
    Path own = Path.of("src", "main", "resources", PluginCatalog.FILE);
    CatalogReader reader = CatalogReader.begin(standard);
    reader.bring(new PluginCatalog("plain-torque-arm.jar", Files.readString(own)));
    return reader.finish(List.of());
  }

  @Test
  void keepsTheContractOfEveryLinkage() throws IOException {
    new LinkageContract(LINKAGE, catalog(), SampleVehicle.pickup()).verify();
  }

  /** 900 mm ahead of the axle, on a drop link of 200 mm, unless the job says otherwise. */
  @Test
  void theArmHangsFromItsDropLink() throws IOException {
    Site site = new Site(SampleVehicle.pickup(), FieldValues.none(), catalog(), UnitSystem.METRIC);
    Bar link = LINKAGE.propose(site).bar("drop-link");
    assertEquals(900, link.axle().xMm(), 1e-9);
    assertEquals(200, link.lengthMm(), 1e-9);
  }
}
