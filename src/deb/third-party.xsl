<?xml version="1.0"?>
<!-- The bill of materials as a list for people. A component without a licence stops the build. -->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform" xmlns:b="http://cyclonedx.org/schema/bom/1.6">
  <xsl:output method="text"/>
  <xsl:template match="/">
    <xsl:text>What leat brings along, with version and licence.

</xsl:text>
    <xsl:for-each select="/b:bom/b:components/b:component">
      <xsl:sort select="b:name"/>
      <xsl:if test="not((.//b:license/b:id|.//b:license/b:name|.//b:licenses/b:expression))">
        <xsl:message terminate="yes">no licence is told for <xsl:value-of select="b:name"/></xsl:message>
      </xsl:if>
      <xsl:value-of select="concat(b:name, ' ', b:version, ', ', (.//b:license/b:id|.//b:license/b:name|.//b:licenses/b:expression))"/>
      <xsl:text>
  </xsl:text>
      <xsl:value-of select="b:externalReferences/b:reference[@type='website']/b:url"/>
      <xsl:text>
</xsl:text>
    </xsl:for-each>
  </xsl:template>
</xsl:stylesheet>
