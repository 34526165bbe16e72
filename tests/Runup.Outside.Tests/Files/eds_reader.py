"""Reads electronic data sheets (CiA 306) with Python's configparser, written apart from Runup: the INI part is not ours at all.

Arguments: files. Prints for each file its objects that a register of up to 32 bits can hold, as one JSON object.
"""
import configparser
import json
import re
import sys

TYPES = {0x01: (1, False), 0x02: (8, True), 0x03: (16, True), 0x04: (32, True), 0x05: (8, False), 0x06: (16, False),
         0x07: (32, False), 0x10: (24, True), 0x16: (24, False)}


def number(text):
    """Decimal, hexadecimal with 0x, octal with a leading 0."""
    text = text.strip()
    sign = -1 if text.startswith("-") else 1
    text = text.lstrip("+-")
    if re.fullmatch("0[0-7]+", text):
        return sign * int(text, 8)
    return sign * int(text, 0)


def value(text, node, bits, signed):
    if text is None or not text.strip():
        return None
    if "$NODEID" in text.upper():
        if node is None:
            return None
        read = sum(node if part.strip().upper() == "$NODEID" else number(part) for part in text.split("+"))
    else:
        read = number(text)
    return read - (1 << bits) if signed and (1 << (bits - 1)) <= read < (1 << bits) else read


def described(eds, section, name, group, node):
    bits, signed = TYPES[number(eds.get(section, "datatype"))]
    low = value(eds.get(section, "lowlimit", fallback=None), node, bits, signed)
    high = value(eds.get(section, "highlimit", fallback=None), node, bits, signed)
    if bits == 1:
        low, high = 0 if low is None else low, 1 if high is None else high
    return {"name": name, "group": group, "bits": 32 if bits > 16 else 16, "signed": signed, "low": low, "high": high,
            "default": value(eds.get(section, "defaultvalue", fallback=None), node, bits, signed),
            "access": eds.get(section, "accesstype", fallback="").lower()}


def fits(eds, section):
    return eds.has_option(section, "datatype") and number(eds.get(section, "datatype")) in TYPES


def read(path):
    eds = configparser.RawConfigParser(inline_comment_prefixes=(";",), delimiters=("=",), comment_prefixes=(";",))
    eds.read_string(open(path, encoding="utf-8", newline="").read().replace("\r\n", "\n"))
    by_name = {s.lower(): s for s in eds.sections()}
    node = None
    if "devicecomissioning" in by_name:
        node = number(eds.get(by_name["devicecomissioning"], "nodeid"))
    objects = {}
    for section in eds.sections():
        found = re.fullmatch("([0-9A-Fa-f]{4})(?:[sS][uU][bB]([0-9A-Fa-f]{1,2}))?", section)
        if not found:
            continue
        index, sub = int(found.group(1), 16), found.group(2)
        parent = by_name.get(f"{index:04x}")
        if sub is not None:
            if int(sub, 16) > 0 and fits(eds, section):
                objects[f"{index:04X}h:{int(sub, 16):X}"] = described(eds, section, eds.get(section, "parametername"), eds.get(parent, "parametername"), node)
            continue
        kind = number(eds.get(section, "objecttype", fallback="7"))
        if eds.has_option(section, "compactsubobj") and fits(eds, section):
            names = by_name.get(f"{index:04x}name")
            for i in range(1, number(eds.get(section, "compactsubobj")) + 1):
                if f"{index:04x}sub{i:x}" in by_name:
                    continue
                own = eds.get(names, str(i), fallback="") if names else ""
                objects[f"{index:04X}h:{i:X}"] = described(eds, section, own or f"{eds.get(section, 'parametername')} {i}", eds.get(section, "parametername"), node)
        elif kind == 7 and not eds.has_option(section, "subnumber") and fits(eds, section):
            objects[f"{index:04X}h"] = described(eds, section, eds.get(section, "parametername"), "", node)
    return objects


print(json.dumps({path: read(path) for path in sys.argv[1:]}))
