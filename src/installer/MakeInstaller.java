import java.awt.image.RenderedImage;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import zonewright.desk.WindowIcon;

/**
 * Makes what is installed without a Java of one's own: a folder with the program and just the parts
 * of Java it needs, and from it, where the tools for that are there, a package for Debian and its
 * like with menu entry, icon and file type.
 *
 * <p>The build runs this file as it stands, from the folder of the project: {@code mvn -Pinstaller
 * package}. All tools are those of the JDK; the package wants dpkg-deb and fakeroot too.
 */
final class MakeInstaller {
  private static final Path TARGET = Path.of("target", "installer");
  private static final String NAME = "zonewright";
  private static final String ABOUT = "Landscape irrigation designed zone by zone";
  private static final String TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  /** What no class names but the program uses: letters of other lands, archives, spoken screens. */
  private static final String UNNAMED =
      "jdk.unsupported,jdk.charsets,jdk.zipfs,jdk.accessibility,jdk.localedata,jdk.crypto.ec";

  private MakeInstaller() {}

  public static void main(String[] arguments) throws IOException {
    String jar = arguments[0] + ".jar";
    String version = arguments[1].replaceFirst("-.*", "");
    emptied(TARGET);
    Path input = Files.createDirectories(TARGET.resolve("input"));
    Files.copy(Path.of("target", jar), input.resolve(jar));
    copied(Path.of("target", "libraries"), input.resolve("libraries"));
    Path icon = TARGET.resolve(NAME + ".png");
    ImageIO.write((RenderedImage) WindowIcon.image(256), "png", icon.toFile());
    String modules = modules(jar) + "," + UNNAMED;
    Path runtime = TARGET.resolve("runtime");
    run(
        "jlink",
        List.of(
            "--add-modules",
            modules,
            "--strip-debug",
            "--no-header-files",
            "--no-man-pages",
            "--compress=2",
            "--output",
            runtime.toString()));
    shareClasses(runtime);
    List<String> program =
        List.of(
            "--type",
            "app-image",
            "--name",
            NAME,
            "--app-version",
            version,
            "--description",
            ABOUT,
            "--icon",
            icon.toString(),
            "--input",
            input.toString(),
            "--main-jar",
            jar,
            "--runtime-image",
            runtime.toString(),
            "--java-options",
            "-Xmn64m",
            "--java-options",
            "-XX:CompileThresholdScaling=6",
            "--dest",
            TARGET.toString());
    run("jpackage", program);
    System.out.println("The program with its own Java is in " + TARGET.resolve(NAME));
    if (onPath("dpkg-deb") && onPath("fakeroot")) {
      Path type = TARGET.resolve("type.properties");
      Files.write(
          type,
          List.of("extension=xlsx", "mime-type=" + TYPE, "description=Workbook"),
          StandardCharsets.ISO_8859_1);
      run(
          "jpackage",
          List.of(
              "--type",
              "deb",
              "--name",
              NAME,
              "--app-version",
              version,
              "--description",
              ABOUT,
              "--app-image",
              TARGET.resolve(NAME).toString(),
              "--icon",
              icon.toString(),
              "--vendor",
              "Zonewright",
              "--resource-dir",
              Path.of("src", "installer").toString(),
              "--file-associations",
              type.toString(),
              "--linux-shortcut",
              "--linux-menu-group",
              "Office;Science;",
              "--dest",
              TARGET.toString()));
      System.out.println("The package for dpkg is in " + TARGET);
    } else {
      System.out.println("No package was made: there is no dpkg-deb, or no fakeroot, on the path.");
    }
    for (String step : List.of("input", "runtime", "type.properties", NAME + ".png")) {
      emptied(TARGET.resolve(step));
      Files.deleteIfExists(TARGET.resolve(step));
    }
  }

  /** Returns the parts of Java that the program and its libraries name. */
  private static String modules(String jar) throws IOException {
    try (Stream<Path> libraries = Files.list(Path.of("target", "libraries"))) {
      String path = libraries.map(Path::toString).collect(Collectors.joining(File.pathSeparator));
      return run(
              "jdeps",
              List.of(
                  "--multi-release",
                  "17",
                  "--ignore-missing-deps",
                  "--recursive",
                  "--print-module-deps",
                  "--class-path",
                  path,
                  "target/" + jar))
          .strip();
    }
  }

  /** Keeps Java's own classes ready to be mapped, as a whole Java has them: it starts sooner. */
  private static void shareClasses(Path runtime) throws IOException {
    Path java = runtime.resolve("bin").resolve("java");
    if (Files.exists(java)) {
      try {
        new ProcessBuilder(java.toString(), "-Xshare:dump", "-Xlog:disable")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor();
      } catch (InterruptedException ended) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private static String run(String tool, List<String> arguments) {
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    int status =
        ToolProvider.findFirst(tool)
            .orElseThrow(() -> new IllegalStateException("this Java has no " + tool))
            .run(out, out, arguments.toArray(String[]::new));
    out.flush();
    if (status != 0) {
      throw new IllegalStateException(tool + " failed: " + said);
    }
    return said.toString();
  }

  private static boolean onPath(String command) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
  }

  private static void copied(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  private static void emptied(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          if (!each.equals(folder)) {
            Files.delete(each);
          }
        }
      }
    }
  }
}
