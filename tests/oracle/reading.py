"""Reads one request (INI) and a catalogue (XML) into plain dictionaries of SI numbers."""

import xml.etree.ElementTree as ElementTree

from quantity import money, number, pair, points, span

SPANS = {"viscosity_window", "tension_window", "avoid", "speed", "throw_distance",
         "throughput_span",
         "air_temperature", "surface_tension"}
WORDS = {"maker", "part_number", "designation", "provenance", "serviceable", "waveform", "joins",
         "tilts", "nozzle_delay", "recirculates", "stirs", "board", "supply", "drop_speed_at", "kind",
         "per", "mercury", "grey_method",
         "id", "title", "currency", "ink", "family", "form", "typeface", "text_quality",
         "barcode_symbol", "barcode_direction", "solids", "settles", "absorbency", "material",
         "food_contact", "mode", "indexing", "encoder", "price_date", "date", "solvent",
         "description",
         "organisation", "revision", "contact", "reference", "notes", "region", "units", "language"}
COUNTS = {"nozzles", "colours", "levels", "heads", "driver_sources", "years"}
LISTS = {"families", "fits"}
PRICES = {"price", "budget", "labour", "energy"}


def value_of(section, key, text):
    """One field as the oracle holds it."""
    if key == "throughput":
        return number(text)
    if key in PRICES:
        return money(text)
    if (section, key) in (("service", "serviceable"), ("service", "waveform"),
                          ("service", "driver_sources")):
        return text
    if key == "viscosity" and " at " in text:
        return points(text)
    if key == "resolution":
        return pair(text)
    if key in WORDS:
        return text
    if key in LISTS:
        return [item.strip() for item in text.split(";")]
    if key in ("drops", "frequency", "row_offsets", "row_places"):
        return [number(item)[0] for item in text.split(";")]
    if key in SPANS:
        return span(text)
    value = number(text)[0]
    return int(value) if key in COUNTS else value


def request(text):
    """{section: {key: value}}; the named sections keep their order."""
    sections, current = {}, None
    for line in text.splitlines():
        line = line.strip()
        if not line or line[0] in ";#":
            continue
        if line[0] == "[":
            current = sections.setdefault(line[1:-1].strip(), {})
            kind = line[1:-1].split(".")[0]
        else:
            key, _, value = line.partition("=")
            current[key.strip()] = value_of(kind, key.strip(), value.strip())
    return sections


def row(element):
    """A row of the catalogue: its fields, and the modes of a head in order."""
    found = {"name": element.get("name"), "tag": element.tag, "modes": []}
    for field in element:
        if field.tag == "mode":
            found["modes"].append(row(field))
        else:
            found[field.tag] = value_of(element.tag, field.tag, field.text.strip())
    return found


def catalogue(text):
    """{tag: [rows in order]}."""
    rows = {"head": [], "board": [], "supply": [], "lamp": [], "dryer": [], "part": []}
    for element in ElementTree.fromstring(text):
        rows[element.tag].append(row(element))
    return rows
