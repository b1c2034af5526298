//! Pictures and the frames of moving ones, as red, green and blue.

use std::fs::File;
use std::io::BufReader;
use std::path::Path;

use marlinspeak::picture::Image;

/// A picture, row by row from the top.
#[derive(Clone)]
pub struct Pixels {
    pub width: usize,
    pub height: usize,
    pub rgb: Vec<u8>,
}

impl Pixels {
    pub fn of(image: &Image) -> Self {
        let rgb = image.pixels().chunks(4).flat_map(|dot| dot[..3].to_vec());
        Self {
            width: image.width() as usize,
            height: image.height() as usize,
            rgb: rgb.collect(),
        }
    }
}

/// Lays a rectangle of red, green and blue over a picture.
pub fn lay(canvas: &mut [u8], width: usize, [left, top, across]: [usize; 3], part: &[u8]) {
    for (row, line) in part.chunks(3 * across).enumerate() {
        let at = 3 * ((top + row) * width + left);
        canvas[at..at + line.len()].copy_from_slice(line);
    }
}

/// Every frame of an animated PNG, whole, with the hundredths of a second that it stands.
pub fn frames_of_png(file: &Path) -> Vec<(Pixels, u32)> {
    let file = BufReader::new(File::open(file).unwrap());
    let mut reader = png::Decoder::new(file).read_info().unwrap();
    let [width, height] = [reader.info().width, reader.info().height].map(|side| side as usize);
    let count = reader.info().animation_control.unwrap().num_frames;
    let mut canvas = vec![0; 3 * width * height];
    let mut frames = Vec::new();
    for _ in 0..count {
        let mut part = vec![0; reader.output_buffer_size()];
        let told = reader.next_frame(&mut part).unwrap();
        part.truncate(told.buffer_size());
        let control = *reader.info().frame_control().unwrap();
        assert_eq!(control.delay_den, 100);
        let [left, top, across] = [control.x_offset, control.y_offset, control.width];
        let place = [left, top, across].map(|dots| dots as usize);
        lay(&mut canvas, width, place, &part);
        let pixels = Pixels {
            width,
            height,
            rgb: canvas.clone(),
        };
        frames.push((pixels, control.delay_num.into()));
    }
    frames
}
