"""Reads DXF files with ezdxf, audits them, and prints what it found as JSON."""

import json
import sys

import ezdxf
from ezdxf import recover


def report(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    recovered, recovery = recover.readfile(path)
    return {
        "version": document.dxfversion,
        "units": document.units,
        "measurement": document.header["$MEASUREMENT"],
        "errors": [str(entry.message) for entry in audit.errors + recovery.errors],
        "fixes": [str(entry.message) for entry in audit.fixes + recovery.fixes],
        "layers": {
            layer.dxf.name: [layer.dxf.linetype, layer.dxf.lineweight, layer.dxf.color]
            for layer in document.layers
        },
        "linetypes": [linetype.dxf.name for linetype in document.linetypes],
        "polylines": [
            {
                "layer": entity.dxf.layer,
                "closed": bool(entity.closed),
                "vertices": [list(point) for point in entity.get_points("xyb")],
            }
            for entity in document.modelspace().query("LWPOLYLINE")
        ],
        "texts": [
            {
                "text": entity.plain_text(),
                "height": entity.dxf.height,
                "rotation": entity.dxf.rotation,
            }
            for entity in recovered.modelspace().query("TEXT")
        ],
        "entities": len(document.modelspace()),
    }


print(json.dumps([report(path) for path in sys.argv[1:]]))
