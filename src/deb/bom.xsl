<?xml version="1.0"?>
<!-- Adds to the bill of materials the Java that package.sh puts beside the jar. -->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform" xmlns:b="http://cyclonedx.org/schema/bom/1.6" xmlns="http://cyclonedx.org/schema/bom/1.6" exclude-result-prefixes="b">
  <xsl:param name="uplot"/>
  <xsl:template match="@*|node()">
    <xsl:copy><xsl:apply-templates select="@*|node()"/></xsl:copy>
  </xsl:template>
  <!-- of Jackson's YAML the jar holds the parser that it brings, and nothing of its own -->
  <xsl:template match="b:component[starts-with(b:group, 'com.fasterxml.jackson')]"/>
  <xsl:template match="b:dependency[starts-with(@ref, 'pkg:maven/com.fasterxml.jackson')]"/>
  <xsl:template match="/b:bom/b:components">
    <xsl:copy>
      <xsl:apply-templates select="@*|node()"/>
      <component type="library" bom-ref="uplot">
        <name>uPlot</name>
        <version><xsl:value-of select="$uplot"/></version>
        <description>Charts of html pages</description>
        <licenses><license><id>MIT</id></license></licenses>
        <purl>pkg:npm/uplot@<xsl:value-of select="$uplot"/></purl>
        <externalReferences>
          <reference type="website"><url>https://github.com/leeoniya/uPlot</url></reference>
        </externalReferences>
      </component>
      <component type="platform" bom-ref="openjdk">
        <name>OpenJDK</name>
        <version>@JAVA@</version>
        <description>Java runtime, module java.base</description>
        <licenses><expression>GPL-2.0-only WITH Classpath-exception-2.0</expression></licenses>
        <externalReferences>
          <reference type="website"><url>https://openjdk.org</url></reference>
        </externalReferences>
      </component>
    </xsl:copy>
  </xsl:template>
</xsl:stylesheet>
