<?xml version="1.0"?>
<!-- The bill of materials as paragraphs of a Debian copyright file. -->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform" xmlns:b="http://cyclonedx.org/schema/bom/1.6">
  <xsl:output method="text"/>
  <xsl:template match="/">
    <xsl:for-each select="/b:bom/b:components/b:component[not(starts-with(b:group, 'com.fasterxml.jackson'))]">
      <xsl:sort select="b:name"/>
      <xsl:text>Files: lib/leat.jar(</xsl:text>
      <xsl:value-of select="b:name"/>
      <xsl:text>)
Copyright: the authors of </xsl:text>
      <xsl:value-of select="concat(b:name, ' ', b:version)"/>
      <xsl:text>
 (see META-INF/NOTICE in the jar)
License: </xsl:text>
      <xsl:value-of select=".//b:license/b:id"/>
      <xsl:text>

</xsl:text>
    </xsl:for-each>
    <xsl:text>Files: lib/leat.jar(uPlot)
Copyright: the authors of uPlot (see uplot/LICENSE in the jar)
License: MIT
 Permission is hereby granted, free of charge, to use, copy, modify, merge,
 publish, distribute, sublicense and sell it, as long as its copyright notice
 and this permission go with it; it comes without warranty of any kind. The
 whole text is in lib/leat.jar, uplot/LICENSE, and in each page that holds it.

</xsl:text>
    <xsl:text>License: Apache-2.0
 Licensed under the Apache License, Version 2.0: you may use it only as that
 licence says. On Debian systems it is in /usr/share/common-licenses/Apache-2.0;
 a copy is in lib/leat.jar, META-INF/LICENSE.
</xsl:text>
  </xsl:template>
</xsl:stylesheet>
