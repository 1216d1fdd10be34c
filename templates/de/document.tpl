{{%AUTOESCAPE context="XML"}}
<document title="{{TITLE}}" customer="{{CUSTOMER}}" id="{{ID}}" language="{{LANGUAGE}}" date="{{DATE}}"
  author="{{OWNER}}" creator="{{CREATOR}}" subject="Systemspezifikation" keywords="{{KEYWORDS}}">
<titleblock note="{{CONFIDENTIAL}}">
<cell name="owner" label="Eigentümer">{{OWNER}}</cell>
<cell name="title" label="Titel">{{TITLE}}</cell>
<cell name="status" label="Status">VORLÄUFIG</cell>
<cell name="number" label="Identifikationsnummer">{{ID}}</cell>
<cell name="type" label="Dokumentart">Systemspezifikation</cell>
<cell name="creator" label="Ersteller">{{CREATOR}}</cell>
<cell name="approval" label="Genehmigende Person">{{APPROVAL}}</cell>
<cell name="date" label="Ausgabedatum">{{DATE}}</cell>
<cell name="revision" label="Revision">{{REVISION}}</cell>
<cell name="language" label="Sprache">{{LANGUAGE}}</cell>
<cell name="sheet" label="Blatt"/>
</titleblock>
<front>
{{FRONT:none}}
</front>
<contents title="Inhalt" depth="2"/>
{{SECTIONS:none}}
</document>
