"""Writes one plate with a hole, 300 by 200 pixels, as files of many kinds into a folder."""
import os
import sys

import numpy as np
from PIL import Image, ImageDraw
from PIL.TiffImagePlugin import IFDRational

os.chdir(sys.argv[1])
FINE = 8
drawn = Image.new("L", (300 * FINE, 200 * FINE), 255)
pen = ImageDraw.Draw(drawn)
pen.rectangle([60 * FINE, 50 * FINE, 240 * FINE - 1, 150 * FINE - 1], fill=0)
pen.ellipse([125 * FINE, 75 * FINE, 175 * FINE - 1, 125 * FINE - 1], fill=255)
grey = drawn.resize((300, 200), Image.BOX)
covered = Image.eval(grey, lambda level: 255 - level)
rgb = grey.convert("RGB")
wide = np.asarray(grey).astype(np.uint16) * 257


def exif(**tags):
    made = Image.Exif()
    for tag, value in tags.items():
        made[int(tag[1:])] = value
    return made


# Birch on a green cloth: colours that tell whether inks were read rightly.
share = np.asarray(covered)[..., None] / 255
cloth = share * np.array([226, 204, 150]) + (1 - share) * np.array([30, 110, 50])
black = 1 - cloth.max(2) / 255
colours = 1 - cloth / 255 / (1 - black)[..., None]
ink = np.rint(255 * np.dstack([colours, black])).clip(0, 255).astype(np.uint8)
Image.fromarray(ink, "CMYK").save("inks.jpg", quality=95)
Image.fromarray(ink, "CMYK").save("inks.tif")
# The same with three of the inks turned into light and differences of colour, and marked so.
turned = np.asarray(Image.fromarray(ink[..., :3], "RGB").convert("YCbCr"))
stored = np.dstack([turned, 255 - ink[..., 3]])
Image.fromarray(255 - stored, "CMYK").save("inks-turned.jpg", quality=95)
data = bytearray(open("inks-turned.jpg", "rb").read())
data[data.index(b"Adobe") + 11] = 2
open("inks-turned.jpg", "wb").write(data)
for name in ("inks.jpg", "inks-turned.jpg", "inks.tif"):
    Image.open(name).convert("RGB").save(name + ".png")

# A plate cut out of its ground by a program, paler than the paper it would be laid on.
white = Image.new("L", grey.size, 255)
Image.merge("RGBA", (white, white, white, covered)).save("cut-out.png")
Image.merge("LA", (white, covered)).save("cut-out-grey.png")
rgb.quantize(16).save("palette.png")
rgb.quantize(16).save("palette-see-through.png", transparency=0)
grey.convert("1").save("bilevel.png")
Image.fromarray(wide).save("wide.png")
Image.fromarray(wide).save("wide.tif")
grey.convert("1").save("fax.tif", compression="group4")
grey.convert("1").save("bilevel.tif")
covered.save("white-is-zero.tif", tiffinfo={262: 0})
for packing in ("tiff_lzw", "tiff_adobe_deflate", "packbits", "jpeg"):
    rgb.save(packing + ".tif", compression=packing)
rgb.convert("P").save("palette.tif")
Image.fromarray(wide.astype(np.float32) / 65535).save("fractions.tif")
Image.fromarray(wide.astype(np.int32)).save("wide32.tif")
Image.new("L", (60, 40), 128).save("small-first.tif", save_all=True, append_images=[grey])

rgb.save("inch.tif", dpi=(300, 300))
rgb.save("cm.tif", tiffinfo={282: 118.11, 283: 118.11, 296: 3})
rgb.save("ratio.tif", tiffinfo={282: 300.0, 283: 300.0, 296: 1})
rgb.save("exif-cm.jpg", quality=95, exif=exif(t282=118.0, t283=118.0, t296=3))
inches = dict(t282=300.0, t283=300.0, t296=2)
rgb.save("agree.jpg", quality=95, dpi=(300, 300), exif=exif(**inches))
rgb.save("disagree.jpg", quality=95, dpi=(72, 72), exif=exif(**inches))
rgb.save("exif-turned.png", exif=exif(t274=6, **inches))
rgb.save("unknowing.jpg", quality=95, dpi=(72, 72))
shot = exif(**inches)
shot[0x8769] = {33434: IFDRational(1, 60)}
rgb.save("camera.jpg", quality=95, exif=shot.tobytes())
scanned = exif(**inches)
scanned[0x8769] = {40961: 1}
rgb.save("scanner.jpg", quality=95, exif=scanned.tobytes())

large = np.asarray(grey.resize((1200, 800), Image.BICUBIC)).astype(float)
large += np.random.default_rng(1).normal(0, 3, large.shape)
large = Image.fromarray(large.clip(0, 255).astype(np.uint8)).convert("RGB")
large.save("large.jpg")
large.save("large-progressive.jpg", progressive=True)
large.save("large.png")
large.save("large.tif")
large.save("large-lzw.tif", compression="tiff_lzw")
for name in [n for n in os.listdir(".") if n.startswith("large")]:
    whole = open(name, "rb").read()
    for percent in (30, 60, 90, 99):
        open(f"cut{percent}-{name}", "wb").write(whole[: len(whole) * percent // 100])
