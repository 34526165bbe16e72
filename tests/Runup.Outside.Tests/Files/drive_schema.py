"""Holds the schema of drive profiles against the examples of the documentation and the shipped makes, and against corruptions."""
import copy
import json
import sys

import jsonschema
import yaml


def keys_as_text(node):
    if isinstance(node, dict):
        return {str(key): keys_as_text(value) for key, value in node.items()}
    return [keys_as_text(item) for item in node] if isinstance(node, list) else node


schema = json.load(open(sys.argv[1], encoding="utf-8"))
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
examples = [keys_as_text(yaml.safe_load(block.split("```")[0])) for block in open(sys.argv[2], encoding="utf-8").read().split("```yaml\n")[1:]]
makes = [keys_as_text(yaml.safe_load(open(path, encoding="utf-8"))) for path in sys.argv[3:]]


def faults(profile):
    return [f"{list(fault.path)} {fault.message}" for fault in validator.iter_errors(profile)]


def refused(change):
    profile = copy.deepcopy(examples[2])
    change(profile)
    return len(faults(profile)) > 0


def row(profile, place):
    return [r for group in profile["groups"] for r in group["parameters"]][place]


print(json.dumps({
    "examples": [faults(profile) for profile in examples],
    "makes": [faults(profile) for profile in makes],
    "refused": {
        "newer format": refused(lambda p: p.update({"drive-profile": 2})),
        "unknown key": refused(lambda p: row(p, 1).update({"not-over": 10})),
        "dependent of nothing known": refused(lambda p: row(p, 1).update({"default": {"by": 10}})),
        "bits without a place": refused(lambda p: row(p, 12)["bits"].update({"x": {"means": "phase-loss", "0": "trip"}})),
        "bits without meaning": refused(lambda p: row(p, 12)["bits"].update({"5": {"0": "trip"}})),
        "digits of another base": refused(lambda p: row(p, 12).update({"shown-in": "octal"})),
        "part of a size's power": refused(lambda p: row(p, 11).update({"part-of": {"power": "normal"}})),
        "region with a range": refused(lambda p: p["regions"]["60-hz"].update({"ranges": {}})),
        "setting that is none": refused(lambda p: row(p, 1).update({"means": "base-frequenzy"})),
    },
}))
