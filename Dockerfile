# Orbwright in a container: a trimmed Java 25 with the service and what the Java machine learned of it in a rehearsal.
#
#   docker build -t orbwright .
#   docker run --rm --read-only --tmpfs /tmp -p 8080:8080 orbwright
#
# BUILD_IMAGE holds a JDK 25 (JAVA_HOME set), Maven and a shell. Of BASE_IMAGE nothing is needed but the libraries of C and
# C++ (glibc, libstdc++): no shell, no fonts, no package manager.
ARG BUILD_IMAGE=maven:3.9-eclipse-temurin-25
ARG BASE_IMAGE=gcr.io/distroless/cc-debian12

FROM ${BUILD_IMAGE} AS build
WORKDIR /build
COPY pom.xml LICENSE ./
COPY src/main src/main
COPY src/licences.properties src/
COPY openapi openapi
# One flat class path, which the cache below can hold; tests and format have their turn in CI.
RUN --mount=type=cache,target=/root/.m2/repository \
    mvn -q -B package -Dmaven.test.skip=true -Dspotless.check.skip=true -Dquarkus.package.jar.type=aot-jar
# The linked modules are what the service asks for by its libraries' manifests and services, not what jdeps finds alone.
#
# Its own options, which JDK_JAVA_OPTIONS and the command line overrule one by one. In ENTRYPOINT they would stand after
# JDK_JAVA_OPTIONS, and nobody could overrule them there:
# - the serial collector, which needs the least memory, unless another one is named: the first option says so, the second
#   keeps the first from leaving out the compiler for what runs long. No collector is named here: a second one is refused;
# - a heap of at most 60 % of the container's memory, the rest is for the cache, code and libraries (some 110 MB, and what
#   pictures and connections take), and a small one at first, so that it grows with the work and not with the machine;
# - short pointers, on large machines too, where that many per cent would need long ones, with which no cache can be shared;
# - the cache at the addresses that it was made for: elsewhere most of it would be written to, page by page (-15 MB);
# - no compiling by what the rehearsal learned of the methods, only the classes of its cache: with it, methods that write long
#   texts at times stayed slow, and a mixed load got half as many answers (JDK 25.0.3);
# - what compilers and libraries no longer use goes back to the system every 5 s (-19 MB);
# - an end, and with it a restart, where memory does not suffice, and no file of counters in /tmp.
RUN jlink --output /opt/orbwright/java --no-header-files --no-man-pages --compress=zip-6 \
    --strip-java-debug-attributes --add-options="-XX:+NeverActAsServerClassMachine -XX:+TieredCompilation \
-XX:MaxRAMPercentage=60 -Xms16m -XX:+UseCompressedOops -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 \
-XX:-AOTReplayTraining -XX:TrimNativeHeapInterval=5000 -XX:+ExitOnOutOfMemoryError -XX:-UsePerfData" --add-modules \
    java.base,java.compiler,java.desktop,java.instrument,java.logging,java.management,java.naming,java.net.http,\
java.rmi,java.scripting,java.security.jgss,java.security.sasl,java.sql,java.transaction.xa,java.xml,\
jdk.crypto.ec,jdk.jfr,jdk.management,jdk.unsupported,jdk.zipfs
COPY src/container src/container
# Pictures write their text in the one font that comes with the PDF library, so that none has to be installed. With its
# fontconfig.properties the Java machine does not look for fontconfig. Without both it throws.
RUN cp -r target/quarkus-app/. target/bom.json target/licences.txt LICENSE /opt/orbwright/ && \
    mkdir -p /opt/orbwright/java/lib/fonts && cd /opt/orbwright/java/lib/fonts && \
    jar --extract --file "$(ls /opt/orbwright/lib/main/org.apache.pdfbox.pdfbox-[0-9]*.jar)" \
      org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf && \
    mv org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf . && rm -r org && \
    cp /build/src/container/fontconfig.properties ..
# The solver's native libraries lie beside the service, so that none has to be unpacked when the first plan is asked for; of
# the jar that brings them an empty one is left, as the class path names it.
RUN cd /opt/orbwright && natives="$(ls "$PWD"/lib/main/com.google.ortools.ortools-linux-*.jar)" && mkdir native && \
    cd native && jar --extract --file "$natives" && mv ortools-linux-*/* . && rm -r META-INF ortools-linux-* && \
    touch /build/empty && jar --create --file "$natives" -C /build empty
# The Java machine takes the cache only beside files of the same size and time: those are set before it is made, to a fixed
# time, so that layers come out alike. A cache that is missing is no error; -XX:AOTMode=on makes it one. All collectors use
# it but those without compressed pointers (ZGC).
#
# Most of the memory at rest is the cache: classes that are linked at the start are touched then, so all of it is resident.
# Hence pictures, paper and plans are not rehearsed: 20 MB less, and their first answers take a little longer. Without
# linked classes the start would take twice as long. The rest of the start's garbage stays in the heap: the serial collector
# has no reason to look before more is needed.
#
# Two builds of one commit give the same files but for two. One is generated-bytecode.jar, whose classes Quarkus 3.33 does
# not generate in one order (quarkusio/quarkus#7027). The other is the cache, which holds what the rehearsal measured.
ARG SOURCE_DATE_EPOCH=1767225600
RUN find /opt/orbwright -exec touch --no-dereference --date=@${SOURCE_DATE_EPOCH} {} + && \
    java src/container/java/org/orbwright/container/Rehearsal.java /opt/orbwright/java/bin/java \
      -XX:AOTCacheOutput=/opt/orbwright/orbwright.aot \
      -Dsun.awt.fontconfig=/opt/orbwright/java/lib/fontconfig.properties \
      -Djava.library.path=/opt/orbwright/native \
      -Dquarkus.http.host=127.0.0.1 -Dquarkus.http.port=0 -jar /opt/orbwright/quarkus-run.jar && \
    touch --date=@${SOURCE_DATE_EPOCH} /opt/orbwright/orbwright.aot /opt/orbwright

FROM ${BASE_IMAGE}
ARG VERSION=1.0.0-SNAPSHOT
ARG REVISION=unknown
ARG BASE_IMAGE
LABEL org.opencontainers.image.title="Orbwright" \
      org.opencontainers.image.description="Answers what a woodturner has to settle before the first cut of a segmented sphere" \
      org.opencontainers.image.version="${VERSION}" \
      org.opencontainers.image.revision="${REVISION}" \
      org.opencontainers.image.base.name="${BASE_IMAGE}" \
      org.opencontainers.image.licenses="Apache-2.0"
COPY --from=build /opt/orbwright /opt/orbwright
USER 65532:65532
EXPOSE 8080
# Written is only what the service hands out as files, unpacked in /tmp: all else may be read-only.
ENTRYPOINT ["/opt/orbwright/java/bin/java", "-XX:AOTCache=/opt/orbwright/orbwright.aot", \
            "-Dsun.awt.fontconfig=/opt/orbwright/java/lib/fontconfig.properties", \
            "-Djava.library.path=/opt/orbwright/native", \
            "-jar", "/opt/orbwright/quarkus-run.jar"]
# For plain containers; Kubernetes asks by HTTP. Asks the address in ORBWRIGHT_HEALTH, by default
# http://127.0.0.1:8080/q/health/live. This Java machine reads JDK_JAVA_OPTIONS too, so its few megabytes are stated here,
# where they overrule what the service has. No option that opens a port belongs into JDK_JAVA_OPTIONS: it would open twice.
HEALTHCHECK --interval=30s --timeout=5s --start-period=10s --retries=3 \
    CMD ["/opt/orbwright/java/bin/java", "-Xms8m", "-Xmx16m", "-XX:TieredStopAtLevel=1", "-XX:AOTMode=off", \
         "-cp", "/opt/orbwright/app/*", "org.orbwright.api.guard.HealthCheck"]
