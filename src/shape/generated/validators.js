// Generated from schema/*.schema.json; do not edit. npm run generate

export const cases = validate52;
const schema19 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'cases.schema.json',
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    cases: { type: 'array', items: { $ref: '#/$defs/case' }, maxItems: 100000 },
  },
  required: ['protocol', 'cases'],
  additionalProperties: false,
  $defs: {
    case: {
      type: 'object',
      properties: {
        case: { $ref: 'dictionary.schema.json#/$defs/text' },
        story: { $ref: 'dictionary.schema.json#/$defs/text' },
        source: { $ref: 'dictionary.schema.json#/$defs/name' },
        given: { $ref: 'set.schema.json' },
        series: { $ref: 'set.schema.json' },
        expect: { $ref: '#/$defs/expect' },
        teach: { $ref: '#/$defs/teach' },
      },
      required: ['case', 'expect'],
      additionalProperties: false,
    },
    expect: {
      type: 'object',
      properties: {
        level: { $ref: '#/$defs/expected_level' },
        applies: { type: ['string', 'boolean'], enum: ['yes', 'no', 'unsure', true, false] },
        met: { $ref: '#/$defs/names' },
        not_met: { $ref: '#/$defs/names' },
        undecided: { $ref: '#/$defs/names' },
        explained: { $ref: '#/$defs/names' },
        faults: { $ref: '#/$defs/names' },
        not_reliable: { $ref: '#/$defs/names' },
        refused: { $ref: '#/$defs/names' },
        questioned: { $ref: '#/$defs/names' },
        take_first: { $ref: '#/$defs/names' },
        ask_first: { $ref: '#/$defs/names' },
        measures: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/expected_measure' },
        },
        nothing_else_met: { $ref: 'dictionary.schema.json#/$defs/yes' },
      },
      minProperties: 1,
      additionalProperties: false,
    },
    names: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' }, maxItems: 1000 },
    expected_level: {
      type: 'object',
      properties: {
        at_least: { $ref: 'dictionary.schema.json#/$defs/name' },
        could_be: { $ref: 'dictionary.schema.json#/$defs/name' },
        settled: { $ref: 'dictionary.schema.json#/$defs/yes' },
      },
      minProperties: 1,
      additionalProperties: false,
    },
    expected_measure: {
      type: ['number', 'string', 'object'],
      properties: { low: { type: 'number' }, high: { type: 'number' } },
      required: ['low', 'high'],
      additionalProperties: false,
      maxLength: 20,
    },
    teach: {
      type: 'object',
      properties: {
        ask_first: { $ref: 'dictionary.schema.json#/$defs/text' },
        common_mistake: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      additionalProperties: false,
    },
  },
};
const schema21 = { type: 'string', pattern: '^[a-z][a-z0-9_]*$', maxLength: 60 };
const func1 = (text) => [...text].length;
const pattern3 = new RegExp('^[a-z][a-z0-9_]*$', 'u');

function validate95(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate95.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate95.errors = vErrors;
  return errors === 0;
}
validate95.evaluated = { dynamicProps: false, dynamicItems: false };

const schema33 = {
  type: 'object',
  properties: {
    case: { $ref: 'dictionary.schema.json#/$defs/text' },
    story: { $ref: 'dictionary.schema.json#/$defs/text' },
    source: { $ref: 'dictionary.schema.json#/$defs/name' },
    given: { $ref: 'set.schema.json' },
    series: { $ref: 'set.schema.json' },
    expect: { $ref: '#/$defs/expect' },
    teach: { $ref: '#/$defs/teach' },
  },
  required: ['case', 'expect'],
  additionalProperties: false,
};
const schema23 = { type: 'string', minLength: 1, maxLength: 2000 };

function validate98(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate98.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate98.errors = vErrors;
  return errors === 0;
}
validate98.evaluated = { dynamicProps: false, dynamicItems: false };

const schema35 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'set.schema.json',
  type: 'object',
  properties: {
    at: { $ref: '#/$defs/time' },
    patient: { $ref: '#/$defs/patient' },
    sets: { type: 'array', items: { $ref: '#/$defs/timed_set' }, maxItems: 100000 },
  },
  additionalProperties: { $ref: '#/$defs/observed' },
  $defs: {
    time: { type: 'string', maxLength: 40 },
    timed_set: {
      type: 'object',
      properties: { at: { $ref: '#/$defs/time' } },
      required: ['at'],
      additionalProperties: { $ref: '#/$defs/observed' },
    },
    observed: {
      type: ['number', 'string', 'boolean', 'array', 'object'],
      properties: {
        value: {
          type: ['number', 'string', 'boolean', 'array'],
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        unit: { type: 'string', maxLength: 40 },
        low: { type: 'number' },
        high: { type: 'number' },
        unobtainable: { type: ['string', 'boolean'], maxLength: 500 },
        declined: { type: ['string', 'boolean'], maxLength: 500 },
        above_device: { type: 'number' },
        below_device: { type: 'number' },
      },
      additionalProperties: false,
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
    },
    patient: {
      type: 'object',
      properties: {
        standing: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/stated' },
        },
        limits: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/stated' },
        },
      },
      additionalProperties: false,
    },
    stated: {
      type: 'object',
      properties: {
        value: {
          type: ['number', 'string', 'boolean', 'array'],
          items: { $ref: 'dictionary.schema.json#/$defs/name' },
        },
        unit: { type: 'string', maxLength: 40 },
        by: { $ref: 'dictionary.schema.json#/$defs/text' },
        reason: { $ref: 'dictionary.schema.json#/$defs/text' },
        at: { $ref: '#/$defs/time' },
        until: { $ref: '#/$defs/time' },
      },
      required: ['value', 'by'],
      additionalProperties: false,
    },
  },
};
const schema36 = {
  type: ['number', 'string', 'boolean', 'array', 'object'],
  properties: {
    value: {
      type: ['number', 'string', 'boolean', 'array'],
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
    },
    unit: { type: 'string', maxLength: 40 },
    low: { type: 'number' },
    high: { type: 'number' },
    unobtainable: { type: ['string', 'boolean'], maxLength: 500 },
    declined: { type: ['string', 'boolean'], maxLength: 500 },
    above_device: { type: 'number' },
    below_device: { type: 'number' },
  },
  additionalProperties: false,
  items: { $ref: 'dictionary.schema.json#/$defs/name' },
};

function validate104(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate104.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate104.errors = vErrors;
  return errors === 0;
}
validate104.evaluated = { dynamicProps: false, dynamicItems: false };

function validate103(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate103.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (
    (!data || typeof data != 'object') &&
    !(typeof data == 'number' && isFinite(data)) &&
    typeof data !== 'string' &&
    typeof data !== 'boolean'
  ) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema36.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (Array.isArray(data)) {
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate104(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate104.errors);
        errors = vErrors.length;
      }
    }
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(
        key0 === 'value' ||
        key0 === 'unit' ||
        key0 === 'low' ||
        key0 === 'high' ||
        key0 === 'unobtainable' ||
        key0 === 'declined' ||
        key0 === 'above_device' ||
        key0 === 'below_device'
      )) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.value !== undefined) {
      let data1 = data.value;
      if (
        !(typeof data1 == 'number' && isFinite(data1)) &&
        typeof data1 !== 'string' &&
        typeof data1 !== 'boolean' &&
        !Array.isArray(data1)
      ) {
        const err2 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
          keyword: 'type',
          params: { type: schema36.properties.value.type },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      if (Array.isArray(data1)) {
        const len1 = data1.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate104(data1[i1], {
              instancePath: instancePath + '/value/' + i1,
              parentData: data1,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate104.errors);
            errors = vErrors.length;
          }
        }
      }
    }
    if (data.unit !== undefined) {
      let data3 = data.unit;
      if (typeof data3 === 'string') {
        if (func1(data3) > 40) {
          const err3 = {
            instancePath: instancePath + '/unit',
            schemaPath: '#/properties/unit/maxLength',
            keyword: 'maxLength',
            params: { limit: 40 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.low !== undefined) {
      let data4 = data.low;
      if (!(typeof data4 == 'number' && isFinite(data4))) {
        const err5 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.high !== undefined) {
      let data5 = data.high;
      if (!(typeof data5 == 'number' && isFinite(data5))) {
        const err6 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.unobtainable !== undefined) {
      let data6 = data.unobtainable;
      if (typeof data6 !== 'string' && typeof data6 !== 'boolean') {
        const err7 = {
          instancePath: instancePath + '/unobtainable',
          schemaPath: '#/properties/unobtainable/type',
          keyword: 'type',
          params: { type: schema36.properties.unobtainable.type },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
      if (typeof data6 === 'string') {
        if (func1(data6) > 500) {
          const err8 = {
            instancePath: instancePath + '/unobtainable',
            schemaPath: '#/properties/unobtainable/maxLength',
            keyword: 'maxLength',
            params: { limit: 500 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
      }
    }
    if (data.declined !== undefined) {
      let data7 = data.declined;
      if (typeof data7 !== 'string' && typeof data7 !== 'boolean') {
        const err9 = {
          instancePath: instancePath + '/declined',
          schemaPath: '#/properties/declined/type',
          keyword: 'type',
          params: { type: schema36.properties.declined.type },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
      if (typeof data7 === 'string') {
        if (func1(data7) > 500) {
          const err10 = {
            instancePath: instancePath + '/declined',
            schemaPath: '#/properties/declined/maxLength',
            keyword: 'maxLength',
            params: { limit: 500 },
          };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
    }
    if (data.above_device !== undefined) {
      let data8 = data.above_device;
      if (!(typeof data8 == 'number' && isFinite(data8))) {
        const err11 = {
          instancePath: instancePath + '/above_device',
          schemaPath: '#/properties/above_device/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.below_device !== undefined) {
      let data9 = data.below_device;
      if (!(typeof data9 == 'number' && isFinite(data9))) {
        const err12 = {
          instancePath: instancePath + '/below_device',
          schemaPath: '#/properties/below_device/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
  }
  validate103.errors = vErrors;
  return errors === 0;
}
validate103.evaluated = { props: true, items: true, dynamicProps: false, dynamicItems: false };

const schema38 = { type: 'string', maxLength: 40 };

function validate108(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate108.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 40) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 40 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate108.errors = vErrors;
  return errors === 0;
}
validate108.evaluated = { dynamicProps: false, dynamicItems: false };

const schema39 = {
  type: 'object',
  properties: {
    standing: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/stated' },
    },
    limits: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/stated' },
    },
  },
  additionalProperties: false,
};
const schema40 = {
  type: 'object',
  properties: {
    value: {
      type: ['number', 'string', 'boolean', 'array'],
      items: { $ref: 'dictionary.schema.json#/$defs/name' },
    },
    unit: { type: 'string', maxLength: 40 },
    by: { $ref: 'dictionary.schema.json#/$defs/text' },
    reason: { $ref: 'dictionary.schema.json#/$defs/text' },
    at: { $ref: '#/$defs/time' },
    until: { $ref: '#/$defs/time' },
  },
  required: ['value', 'by'],
  additionalProperties: false,
};

function validate114(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate114.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate114.errors = vErrors;
  return errors === 0;
}
validate114.evaluated = { dynamicProps: false, dynamicItems: false };

function validate112(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate112.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.value === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'value' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.by === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'by' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'value' ||
        key0 === 'unit' ||
        key0 === 'by' ||
        key0 === 'reason' ||
        key0 === 'at' ||
        key0 === 'until'
      )) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.value !== undefined) {
      let data0 = data.value;
      if (
        !(typeof data0 == 'number' && isFinite(data0)) &&
        typeof data0 !== 'string' &&
        typeof data0 !== 'boolean' &&
        !Array.isArray(data0)
      ) {
        const err3 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
          keyword: 'type',
          params: { type: schema40.properties.value.type },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (Array.isArray(data0)) {
        const len0 = data0.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate104(data0[i0], {
              instancePath: instancePath + '/value/' + i0,
              parentData: data0,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate104.errors);
            errors = vErrors.length;
          }
        }
      }
    }
    if (data.unit !== undefined) {
      let data2 = data.unit;
      if (typeof data2 === 'string') {
        if (func1(data2) > 40) {
          const err4 = {
            instancePath: instancePath + '/unit',
            schemaPath: '#/properties/unit/maxLength',
            keyword: 'maxLength',
            params: { limit: 40 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.by !== undefined) {
      if (
        !validate114(data.by, {
          instancePath: instancePath + '/by',
          parentData: data,
          parentDataProperty: 'by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate114.errors);
        errors = vErrors.length;
      }
    }
    if (data.reason !== undefined) {
      if (
        !validate114(data.reason, {
          instancePath: instancePath + '/reason',
          parentData: data,
          parentDataProperty: 'reason',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate114.errors);
        errors = vErrors.length;
      }
    }
    if (data.at !== undefined) {
      if (
        !validate108(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate108.errors);
        errors = vErrors.length;
      }
    }
    if (data.until !== undefined) {
      if (
        !validate108(data.until, {
          instancePath: instancePath + '/until',
          parentData: data,
          parentDataProperty: 'until',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate108.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate112.errors = vErrors;
  return errors === 0;
}
validate112.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate110(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate110.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'standing' || key0 === 'limits')) {
        const err0 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    }
    if (data.standing !== undefined) {
      let data0 = data.standing;
      if (data0 && typeof data0 == 'object' && !Array.isArray(data0)) {
        for (const key1 in data0) {
          const _errs4 = errors;
          if (
            !validate104(key1, {
              instancePath: instancePath + '/standing',
              parentData: data0,
              parentDataProperty: 'standing',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate104.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs4 === errors;
          if (!valid1) {
            const err1 = {
              instancePath: instancePath + '/standing',
              schemaPath: '#/properties/standing/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err1];
            } else {
              vErrors.push(err1);
            }
            errors++;
          }
        }
        for (const key2 in data0) {
          if (
            !validate112(data0[key2], {
              instancePath: instancePath + '/standing/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data0,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate112.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err2 = {
          instancePath: instancePath + '/standing',
          schemaPath: '#/properties/standing/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.limits !== undefined) {
      let data2 = data.limits;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key3 in data2) {
          const _errs9 = errors;
          if (
            !validate104(key3, {
              instancePath: instancePath + '/limits',
              parentData: data2,
              parentDataProperty: 'limits',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate104.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs9 === errors;
          if (!valid3) {
            const err3 = {
              instancePath: instancePath + '/limits',
              schemaPath: '#/properties/limits/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        }
        for (const key4 in data2) {
          if (
            !validate112(data2[key4], {
              instancePath: instancePath + '/limits/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate112.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate110.errors = vErrors;
  return errors === 0;
}
validate110.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema42 = {
  type: 'object',
  properties: { at: { $ref: '#/$defs/time' } },
  required: ['at'],
  additionalProperties: { $ref: '#/$defs/observed' },
};

function validate123(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate123.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.at === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'at' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'at')) {
        if (
          !validate103(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate103.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.at !== undefined) {
      if (
        !validate108(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate108.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate123.errors = vErrors;
  return errors === 0;
}
validate123.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate102(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="set.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate102.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'at' || key0 === 'patient' || key0 === 'sets')) {
        if (
          !validate103(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate103.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.at !== undefined) {
      if (
        !validate108(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate108.errors);
        errors = vErrors.length;
      }
    }
    if (data.patient !== undefined) {
      if (
        !validate110(data.patient, {
          instancePath: instancePath + '/patient',
          parentData: data,
          parentDataProperty: 'patient',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate110.errors);
        errors = vErrors.length;
      }
    }
    if (data.sets !== undefined) {
      let data3 = data.sets;
      if (Array.isArray(data3)) {
        if (data3.length > 100000) {
          const err0 = {
            instancePath: instancePath + '/sets',
            schemaPath: '#/properties/sets/maxItems',
            keyword: 'maxItems',
            params: { limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err0];
          } else {
            vErrors.push(err0);
          }
          errors++;
        }
        const len0 = data3.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate123(data3[i0], {
              instancePath: instancePath + '/sets/' + i0,
              parentData: data3,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate123.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err1 = {
          instancePath: instancePath + '/sets',
          schemaPath: '#/properties/sets/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate102.errors = vErrors;
  return errors === 0;
}
validate102.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema43 = {
  type: 'object',
  properties: {
    level: { $ref: '#/$defs/expected_level' },
    applies: { type: ['string', 'boolean'], enum: ['yes', 'no', 'unsure', true, false] },
    met: { $ref: '#/$defs/names' },
    not_met: { $ref: '#/$defs/names' },
    undecided: { $ref: '#/$defs/names' },
    explained: { $ref: '#/$defs/names' },
    faults: { $ref: '#/$defs/names' },
    not_reliable: { $ref: '#/$defs/names' },
    refused: { $ref: '#/$defs/names' },
    questioned: { $ref: '#/$defs/names' },
    take_first: { $ref: '#/$defs/names' },
    ask_first: { $ref: '#/$defs/names' },
    measures: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/expected_measure' },
    },
    nothing_else_met: { $ref: 'dictionary.schema.json#/$defs/yes' },
  },
  minProperties: 1,
  additionalProperties: false,
};
const func5 = Object.prototype.hasOwnProperty;
const schema44 = {
  type: 'object',
  properties: {
    at_least: { $ref: 'dictionary.schema.json#/$defs/name' },
    could_be: { $ref: 'dictionary.schema.json#/$defs/name' },
    settled: { $ref: 'dictionary.schema.json#/$defs/yes' },
  },
  minProperties: 1,
  additionalProperties: false,
};
const schema24 = { type: ['string', 'boolean'], enum: ['yes', 'no', true, false] };

function validate133(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate133.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data !== 'string' && typeof data !== 'boolean') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema24.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (!(data === 'yes' || data === 'no' || data === true || data === false)) {
    const err1 = {
      instancePath,
      schemaPath: '#/enum',
      keyword: 'enum',
      params: { allowedValues: schema24.enum },
    };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate133.errors = vErrors;
  return errors === 0;
}
validate133.evaluated = { dynamicProps: false, dynamicItems: false };

function validate130(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate130.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (Object.keys(data).length < 1) {
      const err0 = {
        instancePath,
        schemaPath: '#/minProperties',
        keyword: 'minProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'at_least' || key0 === 'could_be' || key0 === 'settled')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.at_least !== undefined) {
      if (
        !validate95(data.at_least, {
          instancePath: instancePath + '/at_least',
          parentData: data,
          parentDataProperty: 'at_least',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate95.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be !== undefined) {
      if (
        !validate95(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate95.errors);
        errors = vErrors.length;
      }
    }
    if (data.settled !== undefined) {
      if (
        !validate133(data.settled, {
          instancePath: instancePath + '/settled',
          parentData: data,
          parentDataProperty: 'settled',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate133.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate130.errors = vErrors;
  return errors === 0;
}
validate130.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema46 = { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' }, maxItems: 1000 };

function validate136(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate136.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length > 1000) {
      const err0 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 1000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate95(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate95.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate136.errors = vErrors;
  return errors === 0;
}
validate136.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema47 = {
  type: ['number', 'string', 'object'],
  properties: { low: { type: 'number' }, high: { type: 'number' } },
  required: ['low', 'high'],
  additionalProperties: false,
  maxLength: 20,
};

function validate149(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate149.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (
    !(typeof data == 'number' && isFinite(data)) &&
    typeof data !== 'string' &&
    !(data && typeof data == 'object' && !Array.isArray(data))
  ) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema47.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === 'string') {
    if (func1(data) > 20) {
      const err1 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 20 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.low === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'low' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.high === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'high' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'low' || key0 === 'high')) {
        const err4 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.low !== undefined) {
      let data0 = data.low;
      if (!(typeof data0 == 'number' && isFinite(data0))) {
        const err5 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.high !== undefined) {
      let data1 = data.high;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err6 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
  }
  validate149.errors = vErrors;
  return errors === 0;
}
validate149.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate129(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate129.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (Object.keys(data).length < 1) {
      const err0 = {
        instancePath,
        schemaPath: '#/minProperties',
        keyword: 'minProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema43.properties, key0)) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate130(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate130.errors);
        errors = vErrors.length;
      }
    }
    if (data.applies !== undefined) {
      let data1 = data.applies;
      if (typeof data1 !== 'string' && typeof data1 !== 'boolean') {
        const err2 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/type',
          keyword: 'type',
          params: { type: schema43.properties.applies.type },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      if (!(data1 === 'yes' || data1 === 'no' || data1 === 'unsure' || data1 === true || data1 === false)) {
        const err3 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/enum',
          keyword: 'enum',
          params: { allowedValues: schema43.properties.applies.enum },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.met !== undefined) {
      if (
        !validate136(data.met, {
          instancePath: instancePath + '/met',
          parentData: data,
          parentDataProperty: 'met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_met !== undefined) {
      if (
        !validate136(data.not_met, {
          instancePath: instancePath + '/not_met',
          parentData: data,
          parentDataProperty: 'not_met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.undecided !== undefined) {
      if (
        !validate136(data.undecided, {
          instancePath: instancePath + '/undecided',
          parentData: data,
          parentDataProperty: 'undecided',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained !== undefined) {
      if (
        !validate136(data.explained, {
          instancePath: instancePath + '/explained',
          parentData: data,
          parentDataProperty: 'explained',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.faults !== undefined) {
      if (
        !validate136(data.faults, {
          instancePath: instancePath + '/faults',
          parentData: data,
          parentDataProperty: 'faults',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable !== undefined) {
      if (
        !validate136(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.refused !== undefined) {
      if (
        !validate136(data.refused, {
          instancePath: instancePath + '/refused',
          parentData: data,
          parentDataProperty: 'refused',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.questioned !== undefined) {
      if (
        !validate136(data.questioned, {
          instancePath: instancePath + '/questioned',
          parentData: data,
          parentDataProperty: 'questioned',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.take_first !== undefined) {
      if (
        !validate136(data.take_first, {
          instancePath: instancePath + '/take_first',
          parentData: data,
          parentDataProperty: 'take_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask_first !== undefined) {
      if (
        !validate136(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate136.errors);
        errors = vErrors.length;
      }
    }
    if (data.measures !== undefined) {
      let data12 = data.measures;
      if (data12 && typeof data12 == 'object' && !Array.isArray(data12)) {
        for (const key1 in data12) {
          const _errs17 = errors;
          if (
            !validate95(key1, {
              instancePath: instancePath + '/measures',
              parentData: data12,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate95.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs17 === errors;
          if (!valid1) {
            const err4 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err4];
            } else {
              vErrors.push(err4);
            }
            errors++;
          }
        }
        for (const key2 in data12) {
          if (
            !validate149(data12[key2], {
              instancePath: instancePath + '/measures/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data12,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate149.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.nothing_else_met !== undefined) {
      if (
        !validate133(data.nothing_else_met, {
          instancePath: instancePath + '/nothing_else_met',
          parentData: data,
          parentDataProperty: 'nothing_else_met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate133.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate129.errors = vErrors;
  return errors === 0;
}
validate129.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema48 = {
  type: 'object',
  properties: {
    ask_first: { $ref: 'dictionary.schema.json#/$defs/text' },
    common_mistake: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  additionalProperties: false,
};

function validate153(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate153.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'ask_first' || key0 === 'common_mistake')) {
        const err0 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    }
    if (data.ask_first !== undefined) {
      if (
        !validate98(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate98.errors);
        errors = vErrors.length;
      }
    }
    if (data.common_mistake !== undefined) {
      if (
        !validate98(data.common_mistake, {
          instancePath: instancePath + '/common_mistake',
          parentData: data,
          parentDataProperty: 'common_mistake',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate98.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate153.errors = vErrors;
  return errors === 0;
}
validate153.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate97(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate97.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.case === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'case' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.expect === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'expect' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'case' ||
        key0 === 'story' ||
        key0 === 'source' ||
        key0 === 'given' ||
        key0 === 'series' ||
        key0 === 'expect' ||
        key0 === 'teach'
      )) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.case !== undefined) {
      if (
        !validate98(data.case, {
          instancePath: instancePath + '/case',
          parentData: data,
          parentDataProperty: 'case',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate98.errors);
        errors = vErrors.length;
      }
    }
    if (data.story !== undefined) {
      if (
        !validate98(data.story, {
          instancePath: instancePath + '/story',
          parentData: data,
          parentDataProperty: 'story',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate98.errors);
        errors = vErrors.length;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate95(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate95.errors);
        errors = vErrors.length;
      }
    }
    if (data.given !== undefined) {
      if (
        !validate102(data.given, {
          instancePath: instancePath + '/given',
          parentData: data,
          parentDataProperty: 'given',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate102.errors);
        errors = vErrors.length;
      }
    }
    if (data.series !== undefined) {
      if (
        !validate102(data.series, {
          instancePath: instancePath + '/series',
          parentData: data,
          parentDataProperty: 'series',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate102.errors);
        errors = vErrors.length;
      }
    }
    if (data.expect !== undefined) {
      if (
        !validate129(data.expect, {
          instancePath: instancePath + '/expect',
          parentData: data,
          parentDataProperty: 'expect',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate129.errors);
        errors = vErrors.length;
      }
    }
    if (data.teach !== undefined) {
      if (
        !validate153(data.teach, {
          instancePath: instancePath + '/teach',
          parentData: data,
          parentDataProperty: 'teach',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate97.errors = vErrors;
  return errors === 0;
}
validate97.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate52(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="cases.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate52.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.protocol === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'protocol' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.cases === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'cases' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'cases')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.protocol !== undefined) {
      if (
        !validate95(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate95.errors);
        errors = vErrors.length;
      }
    }
    if (data.cases !== undefined) {
      let data1 = data.cases;
      if (Array.isArray(data1)) {
        if (data1.length > 100000) {
          const err3 = {
            instancePath: instancePath + '/cases',
            schemaPath: '#/properties/cases/maxItems',
            keyword: 'maxItems',
            params: { limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate97(data1[i0], {
              instancePath: instancePath + '/cases/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate97.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/cases',
          schemaPath: '#/properties/cases/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate52.errors = vErrors;
  return errors === 0;
}
validate52.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const dictionary = validate53;
const schema20 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'dictionary.schema.json',
  type: 'object',
  properties: {
    dictionary: { $ref: '#/$defs/name' },
    language: { type: 'integer', const: 1 },
    sources: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/source' },
    },
    observations: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/observation' },
    },
    contradictions: { type: 'array', items: { $ref: '#/$defs/contradiction' } },
  },
  required: ['dictionary', 'language', 'observations'],
  additionalProperties: false,
  $defs: {
    name: { type: 'string', pattern: '^[a-z][a-z0-9_]*$', maxLength: 60 },
    text: { type: 'string', minLength: 1, maxLength: 2000 },
    quantity: { type: ['number', 'string'], maxLength: 60 },
    duration: { type: 'string', pattern: '^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$', maxLength: 40 },
    yes: { type: ['string', 'boolean'], enum: ['yes', 'no', true, false] },
    source: {
      type: 'object',
      properties: {
        cite: { $ref: '#/$defs/text' },
        link: { type: 'string', pattern: '^https://[^ ]+$', maxLength: 300 },
        from_memory: { $ref: '#/$defs/yes' },
      },
      required: ['cite'],
      additionalProperties: false,
    },
    choice: {
      type: 'object',
      properties: {
        choice: { $ref: '#/$defs/name' },
        title: { $ref: '#/$defs/text' },
        meaning: { $ref: '#/$defs/text' },
      },
      required: ['choice', 'title'],
      additionalProperties: false,
    },
    range: { type: 'array', items: { $ref: '#/$defs/range_part' }, minItems: 1, maxItems: 12 },
    range_part: {
      type: ['number', 'object'],
      properties: {
        age_below: { $ref: '#/$defs/quantity' },
        from: { type: 'number' },
        to: { type: 'number' },
      },
      required: ['from', 'to'],
      additionalProperties: false,
    },
    observation: {
      type: 'object',
      properties: {
        title: { $ref: '#/$defs/text' },
        short: { $ref: '#/$defs/text' },
        kind: { type: 'string', enum: ['number', 'choice', 'several', 'yes_no'] },
        meaning: { $ref: '#/$defs/text' },
        unit: { type: 'string', maxLength: 20 },
        step: { $ref: '#/$defs/quantity' },
        possible: { $ref: '#/$defs/range' },
        plausible: { $ref: '#/$defs/range' },
        ordinary: { type: ['number', 'string', 'boolean', 'array'], items: { $ref: '#/$defs/name' } },
        choices: { type: 'array', items: { $ref: '#/$defs/choice' }, minItems: 2, maxItems: 40 },
        loinc: { type: 'string', pattern: '^[0-9]{1,6}-[0-9]$' },
        good_for: { $ref: '#/$defs/duration' },
        taken_with: { $ref: '#/$defs/name' },
        standing: { $ref: '#/$defs/yes' },
        set_by: { $ref: '#/$defs/text' },
        if_not_stated: { type: ['number', 'string', 'boolean'] },
        also_called: { type: 'array', items: { type: 'string', minLength: 1, maxLength: 60 }, maxItems: 20 },
        source: { type: 'array', items: { $ref: '#/$defs/name' }, minItems: 1, maxItems: 10 },
      },
      required: ['title', 'kind'],
      additionalProperties: false,
    },
    contradiction: {
      type: 'object',
      properties: {
        lower: { $ref: '#/$defs/name' },
        higher: { $ref: '#/$defs/name' },
        may_be_equal: { $ref: '#/$defs/yes' },
        says: { $ref: '#/$defs/text' },
      },
      required: ['lower', 'higher', 'says'],
      additionalProperties: false,
    },
  },
};

function validate54(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate54.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate54.errors = vErrors;
  return errors === 0;
}
validate54.evaluated = { dynamicProps: false, dynamicItems: false };

const schema22 = {
  type: 'object',
  properties: {
    cite: { $ref: '#/$defs/text' },
    link: { type: 'string', pattern: '^https://[^ ]+$', maxLength: 300 },
    from_memory: { $ref: '#/$defs/yes' },
  },
  required: ['cite'],
  additionalProperties: false,
};

function validate58(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate58.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate58.errors = vErrors;
  return errors === 0;
}
validate58.evaluated = { dynamicProps: false, dynamicItems: false };

function validate60(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate60.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data !== 'string' && typeof data !== 'boolean') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema24.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (!(data === 'yes' || data === 'no' || data === true || data === false)) {
    const err1 = {
      instancePath,
      schemaPath: '#/enum',
      keyword: 'enum',
      params: { allowedValues: schema24.enum },
    };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate60.errors = vErrors;
  return errors === 0;
}
validate60.evaluated = { dynamicProps: false, dynamicItems: false };

const pattern4 = new RegExp('^https://[^ ]+$', 'u');

function validate57(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate57.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.cite === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'cite' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'cite' || key0 === 'link' || key0 === 'from_memory')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.cite !== undefined) {
      if (
        !validate58(data.cite, {
          instancePath: instancePath + '/cite',
          parentData: data,
          parentDataProperty: 'cite',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.link !== undefined) {
      let data1 = data.link;
      if (typeof data1 === 'string') {
        if (func1(data1) > 300) {
          const err2 = {
            instancePath: instancePath + '/link',
            schemaPath: '#/properties/link/maxLength',
            keyword: 'maxLength',
            params: { limit: 300 },
          };
          if (vErrors === null) {
            vErrors = [err2];
          } else {
            vErrors.push(err2);
          }
          errors++;
        }
        if (!pattern4.test(data1)) {
          const err3 = {
            instancePath: instancePath + '/link',
            schemaPath: '#/properties/link/pattern',
            keyword: 'pattern',
            params: { pattern: '^https://[^ ]+$' },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/link',
          schemaPath: '#/properties/link/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.from_memory !== undefined) {
      if (
        !validate60(data.from_memory, {
          instancePath: instancePath + '/from_memory',
          parentData: data,
          parentDataProperty: 'from_memory',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate60.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate57.errors = vErrors;
  return errors === 0;
}
validate57.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema25 = {
  type: 'object',
  properties: {
    title: { $ref: '#/$defs/text' },
    short: { $ref: '#/$defs/text' },
    kind: { type: 'string', enum: ['number', 'choice', 'several', 'yes_no'] },
    meaning: { $ref: '#/$defs/text' },
    unit: { type: 'string', maxLength: 20 },
    step: { $ref: '#/$defs/quantity' },
    possible: { $ref: '#/$defs/range' },
    plausible: { $ref: '#/$defs/range' },
    ordinary: { type: ['number', 'string', 'boolean', 'array'], items: { $ref: '#/$defs/name' } },
    choices: { type: 'array', items: { $ref: '#/$defs/choice' }, minItems: 2, maxItems: 40 },
    loinc: { type: 'string', pattern: '^[0-9]{1,6}-[0-9]$' },
    good_for: { $ref: '#/$defs/duration' },
    taken_with: { $ref: '#/$defs/name' },
    standing: { $ref: '#/$defs/yes' },
    set_by: { $ref: '#/$defs/text' },
    if_not_stated: { type: ['number', 'string', 'boolean'] },
    also_called: { type: 'array', items: { type: 'string', minLength: 1, maxLength: 60 }, maxItems: 20 },
    source: { type: 'array', items: { $ref: '#/$defs/name' }, minItems: 1, maxItems: 10 },
  },
  required: ['title', 'kind'],
  additionalProperties: false,
};
const schema26 = { type: ['number', 'string'], maxLength: 60 };

function validate68(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate68.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!(typeof data == 'number' && isFinite(data)) && typeof data !== 'string') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema26.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err1 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  }
  validate68.errors = vErrors;
  return errors === 0;
}
validate68.evaluated = { dynamicProps: false, dynamicItems: false };

const schema27 = { type: 'array', items: { $ref: '#/$defs/range_part' }, minItems: 1, maxItems: 12 };
const schema28 = {
  type: ['number', 'object'],
  properties: { age_below: { $ref: '#/$defs/quantity' }, from: { type: 'number' }, to: { type: 'number' } },
  required: ['from', 'to'],
  additionalProperties: false,
};

function validate71(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate71.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (
    !(typeof data == 'number' && isFinite(data)) &&
    !(data && typeof data == 'object' && !Array.isArray(data))
  ) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema28.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.from === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'from' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.to === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'to' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'age_below' || key0 === 'from' || key0 === 'to')) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.age_below !== undefined) {
      if (
        !validate68(data.age_below, {
          instancePath: instancePath + '/age_below',
          parentData: data,
          parentDataProperty: 'age_below',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate68.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      let data1 = data.from;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/from',
          schemaPath: '#/properties/from/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.to !== undefined) {
      let data2 = data.to;
      if (!(typeof data2 == 'number' && isFinite(data2))) {
        const err5 = {
          instancePath: instancePath + '/to',
          schemaPath: '#/properties/to/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
  }
  validate71.errors = vErrors;
  return errors === 0;
}
validate71.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate70(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate70.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length > 12) {
      const err0 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 12 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.length < 1) {
      const err1 = { instancePath, schemaPath: '#/minItems', keyword: 'minItems', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate71(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate71.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate70.errors = vErrors;
  return errors === 0;
}
validate70.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema29 = {
  type: 'object',
  properties: {
    choice: { $ref: '#/$defs/name' },
    title: { $ref: '#/$defs/text' },
    meaning: { $ref: '#/$defs/text' },
  },
  required: ['choice', 'title'],
  additionalProperties: false,
};

function validate77(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate77.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.choice === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'choice' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'choice' || key0 === 'title' || key0 === 'meaning')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.choice !== undefined) {
      if (
        !validate54(data.choice, {
          instancePath: instancePath + '/choice',
          parentData: data,
          parentDataProperty: 'choice',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate58(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.meaning !== undefined) {
      if (
        !validate58(data.meaning, {
          instancePath: instancePath + '/meaning',
          parentData: data,
          parentDataProperty: 'meaning',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate77.errors = vErrors;
  return errors === 0;
}
validate77.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema30 = { type: 'string', pattern: '^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$', maxLength: 40 };
const pattern6 = new RegExp('^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$', 'u');

function validate82(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate82.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 40) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 40 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern6.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate82.errors = vErrors;
  return errors === 0;
}
validate82.evaluated = { dynamicProps: false, dynamicItems: false };

const pattern5 = new RegExp('^[0-9]{1,6}-[0-9]$', 'u');

function validate64(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate64.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.title === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema25.properties, key0)) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate58(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.short !== undefined) {
      if (
        !validate58(data.short, {
          instancePath: instancePath + '/short',
          parentData: data,
          parentDataProperty: 'short',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== undefined) {
      let data2 = data.kind;
      if (typeof data2 !== 'string') {
        const err3 = {
          instancePath: instancePath + '/kind',
          schemaPath: '#/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (!(data2 === 'number' || data2 === 'choice' || data2 === 'several' || data2 === 'yes_no')) {
        const err4 = {
          instancePath: instancePath + '/kind',
          schemaPath: '#/properties/kind/enum',
          keyword: 'enum',
          params: { allowedValues: schema25.properties.kind.enum },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.meaning !== undefined) {
      if (
        !validate58(data.meaning, {
          instancePath: instancePath + '/meaning',
          parentData: data,
          parentDataProperty: 'meaning',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      let data4 = data.unit;
      if (typeof data4 === 'string') {
        if (func1(data4) > 20) {
          const err5 = {
            instancePath: instancePath + '/unit',
            schemaPath: '#/properties/unit/maxLength',
            keyword: 'maxLength',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.step !== undefined) {
      if (
        !validate68(data.step, {
          instancePath: instancePath + '/step',
          parentData: data,
          parentDataProperty: 'step',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate68.errors);
        errors = vErrors.length;
      }
    }
    if (data.possible !== undefined) {
      if (
        !validate70(data.possible, {
          instancePath: instancePath + '/possible',
          parentData: data,
          parentDataProperty: 'possible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.plausible !== undefined) {
      if (
        !validate70(data.plausible, {
          instancePath: instancePath + '/plausible',
          parentData: data,
          parentDataProperty: 'plausible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.ordinary !== undefined) {
      let data8 = data.ordinary;
      if (
        !(typeof data8 == 'number' && isFinite(data8)) &&
        typeof data8 !== 'string' &&
        typeof data8 !== 'boolean' &&
        !Array.isArray(data8)
      ) {
        const err7 = {
          instancePath: instancePath + '/ordinary',
          schemaPath: '#/properties/ordinary/type',
          keyword: 'type',
          params: { type: schema25.properties.ordinary.type },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
      if (Array.isArray(data8)) {
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate54(data8[i0], {
              instancePath: instancePath + '/ordinary/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate54.errors);
            errors = vErrors.length;
          }
        }
      }
    }
    if (data.choices !== undefined) {
      let data10 = data.choices;
      if (Array.isArray(data10)) {
        if (data10.length > 40) {
          const err8 = {
            instancePath: instancePath + '/choices',
            schemaPath: '#/properties/choices/maxItems',
            keyword: 'maxItems',
            params: { limit: 40 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data10.length < 2) {
          const err9 = {
            instancePath: instancePath + '/choices',
            schemaPath: '#/properties/choices/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        const len1 = data10.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate77(data10[i1], {
              instancePath: instancePath + '/choices/' + i1,
              parentData: data10,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate77.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = {
          instancePath: instancePath + '/choices',
          schemaPath: '#/properties/choices/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.loinc !== undefined) {
      let data12 = data.loinc;
      if (typeof data12 === 'string') {
        if (!pattern5.test(data12)) {
          const err11 = {
            instancePath: instancePath + '/loinc',
            schemaPath: '#/properties/loinc/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]{1,6}-[0-9]$' },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/loinc',
          schemaPath: '#/properties/loinc/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.good_for !== undefined) {
      if (
        !validate82(data.good_for, {
          instancePath: instancePath + '/good_for',
          parentData: data,
          parentDataProperty: 'good_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate82.errors);
        errors = vErrors.length;
      }
    }
    if (data.taken_with !== undefined) {
      if (
        !validate54(data.taken_with, {
          instancePath: instancePath + '/taken_with',
          parentData: data,
          parentDataProperty: 'taken_with',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.standing !== undefined) {
      if (
        !validate60(data.standing, {
          instancePath: instancePath + '/standing',
          parentData: data,
          parentDataProperty: 'standing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate60.errors);
        errors = vErrors.length;
      }
    }
    if (data.set_by !== undefined) {
      if (
        !validate58(data.set_by, {
          instancePath: instancePath + '/set_by',
          parentData: data,
          parentDataProperty: 'set_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_not_stated !== undefined) {
      let data17 = data.if_not_stated;
      if (
        !(typeof data17 == 'number' && isFinite(data17)) &&
        typeof data17 !== 'string' &&
        typeof data17 !== 'boolean'
      ) {
        const err13 = {
          instancePath: instancePath + '/if_not_stated',
          schemaPath: '#/properties/if_not_stated/type',
          keyword: 'type',
          params: { type: schema25.properties.if_not_stated.type },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.also_called !== undefined) {
      let data18 = data.also_called;
      if (Array.isArray(data18)) {
        if (data18.length > 20) {
          const err14 = {
            instancePath: instancePath + '/also_called',
            schemaPath: '#/properties/also_called/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
        const len2 = data18.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data19 = data18[i2];
          if (typeof data19 === 'string') {
            if (func1(data19) > 60) {
              const err15 = {
                instancePath: instancePath + '/also_called/' + i2,
                schemaPath: '#/properties/also_called/items/maxLength',
                keyword: 'maxLength',
                params: { limit: 60 },
              };
              if (vErrors === null) {
                vErrors = [err15];
              } else {
                vErrors.push(err15);
              }
              errors++;
            }
            if (func1(data19) < 1) {
              const err16 = {
                instancePath: instancePath + '/also_called/' + i2,
                schemaPath: '#/properties/also_called/items/minLength',
                keyword: 'minLength',
                params: { limit: 1 },
              };
              if (vErrors === null) {
                vErrors = [err16];
              } else {
                vErrors.push(err16);
              }
              errors++;
            }
          } else {
            const err17 = {
              instancePath: instancePath + '/also_called/' + i2,
              schemaPath: '#/properties/also_called/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/also_called',
          schemaPath: '#/properties/also_called/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.source !== undefined) {
      let data20 = data.source;
      if (Array.isArray(data20)) {
        if (data20.length > 10) {
          const err19 = {
            instancePath: instancePath + '/source',
            schemaPath: '#/properties/source/maxItems',
            keyword: 'maxItems',
            params: { limit: 10 },
          };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (data20.length < 1) {
          const err20 = {
            instancePath: instancePath + '/source',
            schemaPath: '#/properties/source/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err20];
          } else {
            vErrors.push(err20);
          }
          errors++;
        }
        const len3 = data20.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate54(data20[i3], {
              instancePath: instancePath + '/source/' + i3,
              parentData: data20,
              parentDataProperty: i3,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate54.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err21 = {
          instancePath: instancePath + '/source',
          schemaPath: '#/properties/source/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err21];
        } else {
          vErrors.push(err21);
        }
        errors++;
      }
    }
  } else {
    const err22 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err22];
    } else {
      vErrors.push(err22);
    }
    errors++;
  }
  validate64.errors = vErrors;
  return errors === 0;
}
validate64.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema31 = {
  type: 'object',
  properties: {
    lower: { $ref: '#/$defs/name' },
    higher: { $ref: '#/$defs/name' },
    may_be_equal: { $ref: '#/$defs/yes' },
    says: { $ref: '#/$defs/text' },
  },
  required: ['lower', 'higher', 'says'],
  additionalProperties: false,
};

function validate89(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate89.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.lower === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'lower' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.higher === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'higher' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.says === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'says' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'lower' || key0 === 'higher' || key0 === 'may_be_equal' || key0 === 'says')) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.lower !== undefined) {
      if (
        !validate54(data.lower, {
          instancePath: instancePath + '/lower',
          parentData: data,
          parentDataProperty: 'lower',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.higher !== undefined) {
      if (
        !validate54(data.higher, {
          instancePath: instancePath + '/higher',
          parentData: data,
          parentDataProperty: 'higher',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_be_equal !== undefined) {
      if (
        !validate60(data.may_be_equal, {
          instancePath: instancePath + '/may_be_equal',
          parentData: data,
          parentDataProperty: 'may_be_equal',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate60.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate58(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err4 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err4];
    } else {
      vErrors.push(err4);
    }
    errors++;
  }
  validate89.errors = vErrors;
  return errors === 0;
}
validate89.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate53(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="dictionary.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate53.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.dictionary === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'dictionary' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.language === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'language' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.observations === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observations' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'dictionary' ||
        key0 === 'language' ||
        key0 === 'sources' ||
        key0 === 'observations' ||
        key0 === 'contradictions'
      )) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.dictionary !== undefined) {
      if (
        !validate54(data.dictionary, {
          instancePath: instancePath + '/dictionary',
          parentData: data,
          parentDataProperty: 'dictionary',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.language !== undefined) {
      let data1 = data.language;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/language',
          schemaPath: '#/properties/language/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      if (1 !== data1) {
        const err5 = {
          instancePath: instancePath + '/language',
          schemaPath: '#/properties/language/const',
          keyword: 'const',
          params: { allowedValue: 1 },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.sources !== undefined) {
      let data2 = data.sources;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key1 in data2) {
          const _errs7 = errors;
          if (
            !validate54(key1, {
              instancePath: instancePath + '/sources',
              parentData: data2,
              parentDataProperty: 'sources',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate54.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs7 === errors;
          if (!valid1) {
            const err6 = {
              instancePath: instancePath + '/sources',
              schemaPath: '#/properties/sources/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        }
        for (const key2 in data2) {
          if (
            !validate57(data2[key2], {
              instancePath: instancePath + '/sources/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate57.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/sources',
          schemaPath: '#/properties/sources/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.observations !== undefined) {
      let data4 = data.observations;
      if (data4 && typeof data4 == 'object' && !Array.isArray(data4)) {
        for (const key3 in data4) {
          const _errs12 = errors;
          if (
            !validate54(key3, {
              instancePath: instancePath + '/observations',
              parentData: data4,
              parentDataProperty: 'observations',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate54.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs12 === errors;
          if (!valid3) {
            const err8 = {
              instancePath: instancePath + '/observations',
              schemaPath: '#/properties/observations/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err8];
            } else {
              vErrors.push(err8);
            }
            errors++;
          }
        }
        for (const key4 in data4) {
          if (
            !validate64(data4[key4], {
              instancePath: instancePath + '/observations/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data4,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate64.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err9 = {
          instancePath: instancePath + '/observations',
          schemaPath: '#/properties/observations/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.contradictions !== undefined) {
      let data6 = data.contradictions;
      if (Array.isArray(data6)) {
        const len0 = data6.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate89(data6[i0], {
              instancePath: instancePath + '/contradictions/' + i0,
              parentData: data6,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate89.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = {
          instancePath: instancePath + '/contradictions',
          schemaPath: '#/properties/contradictions/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
  }
  validate53.errors = vErrors;
  return errors === 0;
}
validate53.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const ladder = validate158;
const schema49 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ladder.schema.json',
  type: 'object',
  properties: {
    ladder: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    about: { $ref: 'dictionary.schema.json#/$defs/text' },
    levels: { type: 'array', items: { $ref: '#/$defs/level' }, minItems: 2, maxItems: 20 },
  },
  required: ['ladder', 'edition', 'levels'],
  additionalProperties: false,
  $defs: {
    level: {
      type: 'object',
      properties: {
        level: { $ref: 'dictionary.schema.json#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        tell: { type: 'array', items: { $ref: '#/$defs/tell' }, minItems: 1, maxItems: 20 },
        respond: { $ref: 'dictionary.schema.json#/$defs/duration' },
        reassess: { $ref: 'dictionary.schema.json#/$defs/duration' },
        if_no_answer: { $ref: '#/$defs/no_answer' },
        step_down: { $ref: '#/$defs/step_down' },
      },
      required: ['level'],
      additionalProperties: false,
    },
    tell: {
      type: 'object',
      properties: {
        who: { $ref: 'dictionary.schema.json#/$defs/text' },
        from: { $ref: '#/$defs/time_of_day' },
        to: { $ref: '#/$defs/time_of_day' },
      },
      required: ['who'],
      additionalProperties: false,
    },
    time_of_day: { type: 'string', pattern: '^([01][0-9]|2[0-3]):[0-5][0-9]$' },
    no_answer: {
      type: 'object',
      properties: {
        after: { $ref: 'dictionary.schema.json#/$defs/duration' },
        tell: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      required: ['after', 'tell'],
      additionalProperties: false,
    },
    step_down: {
      type: 'object',
      properties: {
        sets_in_a_row: { type: 'integer', minimum: 1, maximum: 20 },
        over: { $ref: 'dictionary.schema.json#/$defs/duration' },
        agreed_by: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      required: ['sets_in_a_row', 'over', 'agreed_by'],
      additionalProperties: false,
    },
  },
};

function validate159(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate159.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate159.errors = vErrors;
  return errors === 0;
}
validate159.evaluated = { dynamicProps: false, dynamicItems: false };

function validate161(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate161.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate161.errors = vErrors;
  return errors === 0;
}
validate161.evaluated = { dynamicProps: false, dynamicItems: false };

const schema52 = {
  type: 'object',
  properties: {
    level: { $ref: 'dictionary.schema.json#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    tell: { type: 'array', items: { $ref: '#/$defs/tell' }, minItems: 1, maxItems: 20 },
    respond: { $ref: 'dictionary.schema.json#/$defs/duration' },
    reassess: { $ref: 'dictionary.schema.json#/$defs/duration' },
    if_no_answer: { $ref: '#/$defs/no_answer' },
    step_down: { $ref: '#/$defs/step_down' },
  },
  required: ['level'],
  additionalProperties: false,
};
const schema53 = {
  type: 'object',
  properties: {
    who: { $ref: 'dictionary.schema.json#/$defs/text' },
    from: { $ref: '#/$defs/time_of_day' },
    to: { $ref: '#/$defs/time_of_day' },
  },
  required: ['who'],
  additionalProperties: false,
};
const schema54 = { type: 'string', pattern: '^([01][0-9]|2[0-3]):[0-5][0-9]$' };
const pattern10 = new RegExp('^([01][0-9]|2[0-3]):[0-5][0-9]$', 'u');

function validate170(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate170.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (!pattern10.test(data)) {
      const err0 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^([01][0-9]|2[0-3]):[0-5][0-9]$' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate170.errors = vErrors;
  return errors === 0;
}
validate170.evaluated = { dynamicProps: false, dynamicItems: false };

function validate168(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate168.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.who === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'who' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'who' || key0 === 'from' || key0 === 'to')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.who !== undefined) {
      if (
        !validate161(data.who, {
          instancePath: instancePath + '/who',
          parentData: data,
          parentDataProperty: 'who',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      if (
        !validate170(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate170.errors);
        errors = vErrors.length;
      }
    }
    if (data.to !== undefined) {
      if (
        !validate170(data.to, {
          instancePath: instancePath + '/to',
          parentData: data,
          parentDataProperty: 'to',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate170.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate168.errors = vErrors;
  return errors === 0;
}
validate168.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate174(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate174.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 40) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 40 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern6.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate174.errors = vErrors;
  return errors === 0;
}
validate174.evaluated = { dynamicProps: false, dynamicItems: false };

const schema56 = {
  type: 'object',
  properties: {
    after: { $ref: 'dictionary.schema.json#/$defs/duration' },
    tell: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['after', 'tell'],
  additionalProperties: false,
};

function validate177(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate177.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.after === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'after' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.tell === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'tell' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'after' || key0 === 'tell')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.after !== undefined) {
      if (
        !validate174(data.after, {
          instancePath: instancePath + '/after',
          parentData: data,
          parentDataProperty: 'after',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate174.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      if (
        !validate161(data.tell, {
          instancePath: instancePath + '/tell',
          parentData: data,
          parentDataProperty: 'tell',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate177.errors = vErrors;
  return errors === 0;
}
validate177.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema57 = {
  type: 'object',
  properties: {
    sets_in_a_row: { type: 'integer', minimum: 1, maximum: 20 },
    over: { $ref: 'dictionary.schema.json#/$defs/duration' },
    agreed_by: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['sets_in_a_row', 'over', 'agreed_by'],
  additionalProperties: false,
};

function validate181(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate181.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.sets_in_a_row === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sets_in_a_row' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.over === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'over' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.agreed_by === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'agreed_by' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'sets_in_a_row' || key0 === 'over' || key0 === 'agreed_by')) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.sets_in_a_row !== undefined) {
      let data0 = data.sets_in_a_row;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
        const err4 = {
          instancePath: instancePath + '/sets_in_a_row',
          schemaPath: '#/properties/sets_in_a_row/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      if (typeof data0 == 'number' && isFinite(data0)) {
        if (data0 > 20 || isNaN(data0)) {
          const err5 = {
            instancePath: instancePath + '/sets_in_a_row',
            schemaPath: '#/properties/sets_in_a_row/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        if (data0 < 1 || isNaN(data0)) {
          const err6 = {
            instancePath: instancePath + '/sets_in_a_row',
            schemaPath: '#/properties/sets_in_a_row/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      }
    }
    if (data.over !== undefined) {
      if (
        !validate174(data.over, {
          instancePath: instancePath + '/over',
          parentData: data,
          parentDataProperty: 'over',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate174.errors);
        errors = vErrors.length;
      }
    }
    if (data.agreed_by !== undefined) {
      if (
        !validate161(data.agreed_by, {
          instancePath: instancePath + '/agreed_by',
          parentData: data,
          parentDataProperty: 'agreed_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate181.errors = vErrors;
  return errors === 0;
}
validate181.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate164(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate164.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.level === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'level' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'level' ||
        key0 === 'title' ||
        key0 === 'says' ||
        key0 === 'tell' ||
        key0 === 'respond' ||
        key0 === 'reassess' ||
        key0 === 'if_no_answer' ||
        key0 === 'step_down'
      )) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate159(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate159.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate161(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate161(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      let data3 = data.tell;
      if (Array.isArray(data3)) {
        if (data3.length > 20) {
          const err2 = {
            instancePath: instancePath + '/tell',
            schemaPath: '#/properties/tell/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err2];
          } else {
            vErrors.push(err2);
          }
          errors++;
        }
        if (data3.length < 1) {
          const err3 = {
            instancePath: instancePath + '/tell',
            schemaPath: '#/properties/tell/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        const len0 = data3.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate168(data3[i0], {
              instancePath: instancePath + '/tell/' + i0,
              parentData: data3,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate168.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/tell',
          schemaPath: '#/properties/tell/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.respond !== undefined) {
      if (
        !validate174(data.respond, {
          instancePath: instancePath + '/respond',
          parentData: data,
          parentDataProperty: 'respond',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate174.errors);
        errors = vErrors.length;
      }
    }
    if (data.reassess !== undefined) {
      if (
        !validate174(data.reassess, {
          instancePath: instancePath + '/reassess',
          parentData: data,
          parentDataProperty: 'reassess',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate174.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_no_answer !== undefined) {
      if (
        !validate177(data.if_no_answer, {
          instancePath: instancePath + '/if_no_answer',
          parentData: data,
          parentDataProperty: 'if_no_answer',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate177.errors);
        errors = vErrors.length;
      }
    }
    if (data.step_down !== undefined) {
      if (
        !validate181(data.step_down, {
          instancePath: instancePath + '/step_down',
          parentData: data,
          parentDataProperty: 'step_down',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate181.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate164.errors = vErrors;
  return errors === 0;
}
validate164.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate158(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="ladder.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate158.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.ladder === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ladder' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.edition === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.levels === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'levels' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'ladder' ||
        key0 === 'edition' ||
        key0 === 'title' ||
        key0 === 'about' ||
        key0 === 'levels'
      )) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.ladder !== undefined) {
      if (
        !validate159(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate159.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 100000 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err6 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      }
    }
    if (data.title !== undefined) {
      if (
        !validate161(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== undefined) {
      if (
        !validate161(data.about, {
          instancePath: instancePath + '/about',
          parentData: data,
          parentDataProperty: 'about',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate161.errors);
        errors = vErrors.length;
      }
    }
    if (data.levels !== undefined) {
      let data4 = data.levels;
      if (Array.isArray(data4)) {
        if (data4.length > 20) {
          const err7 = {
            instancePath: instancePath + '/levels',
            schemaPath: '#/properties/levels/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
        if (data4.length < 2) {
          const err8 = {
            instancePath: instancePath + '/levels',
            schemaPath: '#/properties/levels/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate164(data4[i0], {
              instancePath: instancePath + '/levels/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate164.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err9 = {
          instancePath: instancePath + '/levels',
          schemaPath: '#/properties/levels/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
  } else {
    const err10 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err10];
    } else {
      vErrors.push(err10);
    }
    errors++;
  }
  validate158.errors = vErrors;
  return errors === 0;
}
validate158.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const logic = validate186;
const schema58 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'logic.schema.json',
  type: 'object',
  properties: {
    logic: { type: 'integer', const: 1 },
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1 },
    digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
    inputs: { type: 'array', items: { $ref: '#/$defs/input' } },
    steps: { type: 'array', items: { $ref: '#/$defs/step' } },
    answers: { $ref: '#/$defs/answers' },
  },
  required: ['logic', 'protocol', 'edition', 'digest', 'inputs', 'steps', 'answers'],
  additionalProperties: false,
  $defs: {
    input: {
      type: 'object',
      properties: {
        input: { type: 'string' },
        of: { type: 'string', enum: ['observation', 'limit', 'look_back'] },
        name: { $ref: 'dictionary.schema.json#/$defs/name' },
        part: {
          type: 'string',
          enum: [
            'low',
            'high',
            'known',
            'unobtainable',
            'missing',
            'may',
            'sure',
            'maybe',
            'open',
            'value',
            'count',
          ],
        },
        choice: { $ref: 'dictionary.schema.json#/$defs/name' },
        unit: { type: 'string' },
        steps_per_unit: { type: 'string', pattern: '^[0-9]+(/[0-9]+)?$' },
      },
      required: ['input', 'of', 'name', 'part'],
      additionalProperties: false,
    },
    step: {
      type: 'object',
      properties: { step: { type: 'string' }, is: { $ref: '#/$defs/expression' } },
      required: ['step', 'is'],
      additionalProperties: false,
    },
    expression: {
      type: ['integer', 'boolean', 'object'],
      properties: {
        var: { type: 'string' },
        '+': { $ref: '#/$defs/parts' },
        '-': { $ref: '#/$defs/parts' },
        '*': { $ref: '#/$defs/parts' },
        min: { $ref: '#/$defs/parts' },
        max: { $ref: '#/$defs/parts' },
        '<': { $ref: '#/$defs/parts' },
        '<=': { $ref: '#/$defs/parts' },
        and: { $ref: '#/$defs/parts' },
        or: { $ref: '#/$defs/parts' },
        '!': { $ref: '#/$defs/parts' },
        if: { $ref: '#/$defs/parts' },
      },
      minProperties: 1,
      maxProperties: 1,
      additionalProperties: false,
    },
    parts: { type: 'array', items: { $ref: '#/$defs/expression' }, minItems: 1 },
    answers: {
      type: 'object',
      properties: {
        applies: { $ref: '#/$defs/truth' },
        levels: { $ref: '#/$defs/levels' },
        rules: { type: 'object', additionalProperties: { $ref: '#/$defs/rule' } },
        measures: { type: 'object', additionalProperties: { $ref: '#/$defs/measure' } },
      },
      required: ['applies', 'levels', 'rules', 'measures'],
      additionalProperties: false,
    },
    truth: {
      type: 'object',
      properties: { certain: { $ref: '#/$defs/expression' }, possible: { $ref: '#/$defs/expression' } },
      required: ['certain', 'possible'],
      additionalProperties: false,
    },
    levels: {
      type: 'object',
      properties: {
        raised: { $ref: '#/$defs/expression' },
        could: { $ref: '#/$defs/expression' },
        floor: { $ref: '#/$defs/expression' },
      },
      required: ['raised', 'could', 'floor'],
      additionalProperties: false,
    },
    rule: {
      type: 'object',
      properties: {
        certain: { $ref: '#/$defs/expression' },
        possible: { $ref: '#/$defs/expression' },
        counts: { $ref: '#/$defs/expression' },
        could: { $ref: '#/$defs/expression' },
        explained: { $ref: '#/$defs/truth' },
        not_reliable: { $ref: '#/$defs/expression' },
      },
      required: ['certain', 'possible', 'counts', 'could', 'explained', 'not_reliable'],
      additionalProperties: false,
    },
    measure: {
      type: 'object',
      properties: {
        low: { $ref: '#/$defs/expression' },
        high: { $ref: '#/$defs/expression' },
        scale: { type: 'string', pattern: '^[0-9]+$' },
        bottom_low: { $ref: '#/$defs/expression' },
        bottom_high: { $ref: '#/$defs/expression' },
        bottom_scale: { type: 'string', pattern: '^[0-9]+$' },
        sure: { $ref: '#/$defs/expression' },
        maybe: { $ref: '#/$defs/expression' },
      },
      required: ['low', 'high', 'scale', 'bottom_low', 'bottom_high', 'bottom_scale', 'sure', 'maybe'],
      additionalProperties: false,
    },
  },
};

function validate187(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate187.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate187.errors = vErrors;
  return errors === 0;
}
validate187.evaluated = { dynamicProps: false, dynamicItems: false };

const schema60 = {
  type: 'object',
  properties: {
    input: { type: 'string' },
    of: { type: 'string', enum: ['observation', 'limit', 'look_back'] },
    name: { $ref: 'dictionary.schema.json#/$defs/name' },
    part: {
      type: 'string',
      enum: [
        'low',
        'high',
        'known',
        'unobtainable',
        'missing',
        'may',
        'sure',
        'maybe',
        'open',
        'value',
        'count',
      ],
    },
    choice: { $ref: 'dictionary.schema.json#/$defs/name' },
    unit: { type: 'string' },
    steps_per_unit: { type: 'string', pattern: '^[0-9]+(/[0-9]+)?$' },
  },
  required: ['input', 'of', 'name', 'part'],
  additionalProperties: false,
};
const pattern14 = new RegExp('^[0-9]+(/[0-9]+)?$', 'u');

function validate189(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate189.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.input === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'input' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.of === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'of' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.name === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'name' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.part === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'part' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'input' ||
        key0 === 'of' ||
        key0 === 'name' ||
        key0 === 'part' ||
        key0 === 'choice' ||
        key0 === 'unit' ||
        key0 === 'steps_per_unit'
      )) {
        const err4 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.input !== undefined) {
      if (typeof data.input !== 'string') {
        const err5 = {
          instancePath: instancePath + '/input',
          schemaPath: '#/properties/input/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.of !== undefined) {
      let data1 = data.of;
      if (typeof data1 !== 'string') {
        const err6 = {
          instancePath: instancePath + '/of',
          schemaPath: '#/properties/of/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
      if (!(data1 === 'observation' || data1 === 'limit' || data1 === 'look_back')) {
        const err7 = {
          instancePath: instancePath + '/of',
          schemaPath: '#/properties/of/enum',
          keyword: 'enum',
          params: { allowedValues: schema60.properties.of.enum },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.name !== undefined) {
      if (
        !validate187(data.name, {
          instancePath: instancePath + '/name',
          parentData: data,
          parentDataProperty: 'name',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate187.errors);
        errors = vErrors.length;
      }
    }
    if (data.part !== undefined) {
      let data3 = data.part;
      if (typeof data3 !== 'string') {
        const err8 = {
          instancePath: instancePath + '/part',
          schemaPath: '#/properties/part/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
      if (!(
        data3 === 'low' ||
        data3 === 'high' ||
        data3 === 'known' ||
        data3 === 'unobtainable' ||
        data3 === 'missing' ||
        data3 === 'may' ||
        data3 === 'sure' ||
        data3 === 'maybe' ||
        data3 === 'open' ||
        data3 === 'value' ||
        data3 === 'count'
      )) {
        const err9 = {
          instancePath: instancePath + '/part',
          schemaPath: '#/properties/part/enum',
          keyword: 'enum',
          params: { allowedValues: schema60.properties.part.enum },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.choice !== undefined) {
      if (
        !validate187(data.choice, {
          instancePath: instancePath + '/choice',
          parentData: data,
          parentDataProperty: 'choice',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate187.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      if (typeof data.unit !== 'string') {
        const err10 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.steps_per_unit !== undefined) {
      let data6 = data.steps_per_unit;
      if (typeof data6 === 'string') {
        if (!pattern14.test(data6)) {
          const err11 = {
            instancePath: instancePath + '/steps_per_unit',
            schemaPath: '#/properties/steps_per_unit/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]+(/[0-9]+)?$' },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/steps_per_unit',
          schemaPath: '#/properties/steps_per_unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
  } else {
    const err13 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err13];
    } else {
      vErrors.push(err13);
    }
    errors++;
  }
  validate189.errors = vErrors;
  return errors === 0;
}
validate189.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema61 = {
  type: 'object',
  properties: { step: { type: 'string' }, is: { $ref: '#/$defs/expression' } },
  required: ['step', 'is'],
  additionalProperties: false,
};
const schema62 = {
  type: ['integer', 'boolean', 'object'],
  properties: {
    var: { type: 'string' },
    '+': { $ref: '#/$defs/parts' },
    '-': { $ref: '#/$defs/parts' },
    '*': { $ref: '#/$defs/parts' },
    min: { $ref: '#/$defs/parts' },
    max: { $ref: '#/$defs/parts' },
    '<': { $ref: '#/$defs/parts' },
    '<=': { $ref: '#/$defs/parts' },
    and: { $ref: '#/$defs/parts' },
    or: { $ref: '#/$defs/parts' },
    '!': { $ref: '#/$defs/parts' },
    if: { $ref: '#/$defs/parts' },
  },
  minProperties: 1,
  maxProperties: 1,
  additionalProperties: false,
};
const schema63 = { type: 'array', items: { $ref: '#/$defs/expression' }, minItems: 1 };
const wrapper0 = { validate: validate194 };

function validate195(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate195.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length < 1) {
      const err0 = { instancePath, schemaPath: '#/minItems', keyword: 'minItems', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !wrapper0.validate(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, wrapper0.validate.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate195.errors = vErrors;
  return errors === 0;
}
validate195.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate194(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate194.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (
    !(typeof data == 'number' && !(data % 1) && !isNaN(data) && isFinite(data)) &&
    typeof data !== 'boolean' &&
    !(data && typeof data == 'object' && !Array.isArray(data))
  ) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema62.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (Object.keys(data).length > 1) {
      const err1 = {
        instancePath,
        schemaPath: '#/maxProperties',
        keyword: 'maxProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (Object.keys(data).length < 1) {
      const err2 = {
        instancePath,
        schemaPath: '#/minProperties',
        keyword: 'minProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema62.properties, key0)) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.var !== undefined) {
      if (typeof data.var !== 'string') {
        const err4 = {
          instancePath: instancePath + '/var',
          schemaPath: '#/properties/var/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data['+'] !== undefined) {
      if (
        !validate195(data['+'], {
          instancePath: instancePath + '/+',
          parentData: data,
          parentDataProperty: '+',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data['-'] !== undefined) {
      if (
        !validate195(data['-'], {
          instancePath: instancePath + '/-',
          parentData: data,
          parentDataProperty: '-',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data['*'] !== undefined) {
      if (
        !validate195(data['*'], {
          instancePath: instancePath + '/*',
          parentData: data,
          parentDataProperty: '*',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data.min !== undefined) {
      if (
        !validate195(data.min, {
          instancePath: instancePath + '/min',
          parentData: data,
          parentDataProperty: 'min',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data.max !== undefined) {
      if (
        !validate195(data.max, {
          instancePath: instancePath + '/max',
          parentData: data,
          parentDataProperty: 'max',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data['<'] !== undefined) {
      if (
        !validate195(data['<'], {
          instancePath: instancePath + '/<',
          parentData: data,
          parentDataProperty: '<',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data['<='] !== undefined) {
      if (
        !validate195(data['<='], {
          instancePath: instancePath + '/<=',
          parentData: data,
          parentDataProperty: '<=',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data.and !== undefined) {
      if (
        !validate195(data.and, {
          instancePath: instancePath + '/and',
          parentData: data,
          parentDataProperty: 'and',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data.or !== undefined) {
      if (
        !validate195(data.or, {
          instancePath: instancePath + '/or',
          parentData: data,
          parentDataProperty: 'or',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data['!'] !== undefined) {
      if (
        !validate195(data['!'], {
          instancePath: instancePath + '/!',
          parentData: data,
          parentDataProperty: '!',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
    if (data.if !== undefined) {
      if (
        !validate195(data.if, {
          instancePath: instancePath + '/if',
          parentData: data,
          parentDataProperty: 'if',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate195.errors);
        errors = vErrors.length;
      }
    }
  }
  validate194.errors = vErrors;
  return errors === 0;
}
validate194.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate193(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate193.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.step === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'step' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.is === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'is' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'step' || key0 === 'is')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.step !== undefined) {
      if (typeof data.step !== 'string') {
        const err3 = {
          instancePath: instancePath + '/step',
          schemaPath: '#/properties/step/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.is !== undefined) {
      if (
        !validate194(data.is, {
          instancePath: instancePath + '/is',
          parentData: data,
          parentDataProperty: 'is',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err4 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err4];
    } else {
      vErrors.push(err4);
    }
    errors++;
  }
  validate193.errors = vErrors;
  return errors === 0;
}
validate193.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema64 = {
  type: 'object',
  properties: {
    applies: { $ref: '#/$defs/truth' },
    levels: { $ref: '#/$defs/levels' },
    rules: { type: 'object', additionalProperties: { $ref: '#/$defs/rule' } },
    measures: { type: 'object', additionalProperties: { $ref: '#/$defs/measure' } },
  },
  required: ['applies', 'levels', 'rules', 'measures'],
  additionalProperties: false,
};
const schema65 = {
  type: 'object',
  properties: { certain: { $ref: '#/$defs/expression' }, possible: { $ref: '#/$defs/expression' } },
  required: ['certain', 'possible'],
  additionalProperties: false,
};

function validate210(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate210.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.certain === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'certain' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.possible === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'possible' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'certain' || key0 === 'possible')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.certain !== undefined) {
      if (
        !validate194(data.certain, {
          instancePath: instancePath + '/certain',
          parentData: data,
          parentDataProperty: 'certain',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.possible !== undefined) {
      if (
        !validate194(data.possible, {
          instancePath: instancePath + '/possible',
          parentData: data,
          parentDataProperty: 'possible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate210.errors = vErrors;
  return errors === 0;
}
validate210.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema66 = {
  type: 'object',
  properties: {
    raised: { $ref: '#/$defs/expression' },
    could: { $ref: '#/$defs/expression' },
    floor: { $ref: '#/$defs/expression' },
  },
  required: ['raised', 'could', 'floor'],
  additionalProperties: false,
};

function validate214(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate214.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.raised === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'raised' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.could === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'could' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.floor === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'floor' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'raised' || key0 === 'could' || key0 === 'floor')) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.raised !== undefined) {
      if (
        !validate194(data.raised, {
          instancePath: instancePath + '/raised',
          parentData: data,
          parentDataProperty: 'raised',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.could !== undefined) {
      if (
        !validate194(data.could, {
          instancePath: instancePath + '/could',
          parentData: data,
          parentDataProperty: 'could',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.floor !== undefined) {
      if (
        !validate194(data.floor, {
          instancePath: instancePath + '/floor',
          parentData: data,
          parentDataProperty: 'floor',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err4 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err4];
    } else {
      vErrors.push(err4);
    }
    errors++;
  }
  validate214.errors = vErrors;
  return errors === 0;
}
validate214.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema67 = {
  type: 'object',
  properties: {
    certain: { $ref: '#/$defs/expression' },
    possible: { $ref: '#/$defs/expression' },
    counts: { $ref: '#/$defs/expression' },
    could: { $ref: '#/$defs/expression' },
    explained: { $ref: '#/$defs/truth' },
    not_reliable: { $ref: '#/$defs/expression' },
  },
  required: ['certain', 'possible', 'counts', 'could', 'explained', 'not_reliable'],
  additionalProperties: false,
};

function validate219(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate219.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.certain === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'certain' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.possible === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'possible' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.counts === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'counts' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.could === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'could' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.explained === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'explained' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.not_reliable === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'not_reliable' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'certain' ||
        key0 === 'possible' ||
        key0 === 'counts' ||
        key0 === 'could' ||
        key0 === 'explained' ||
        key0 === 'not_reliable'
      )) {
        const err6 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.certain !== undefined) {
      if (
        !validate194(data.certain, {
          instancePath: instancePath + '/certain',
          parentData: data,
          parentDataProperty: 'certain',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.possible !== undefined) {
      if (
        !validate194(data.possible, {
          instancePath: instancePath + '/possible',
          parentData: data,
          parentDataProperty: 'possible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.counts !== undefined) {
      if (
        !validate194(data.counts, {
          instancePath: instancePath + '/counts',
          parentData: data,
          parentDataProperty: 'counts',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.could !== undefined) {
      if (
        !validate194(data.could, {
          instancePath: instancePath + '/could',
          parentData: data,
          parentDataProperty: 'could',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained !== undefined) {
      if (
        !validate210(data.explained, {
          instancePath: instancePath + '/explained',
          parentData: data,
          parentDataProperty: 'explained',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate210.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable !== undefined) {
      if (
        !validate194(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate219.errors = vErrors;
  return errors === 0;
}
validate219.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema68 = {
  type: 'object',
  properties: {
    low: { $ref: '#/$defs/expression' },
    high: { $ref: '#/$defs/expression' },
    scale: { type: 'string', pattern: '^[0-9]+$' },
    bottom_low: { $ref: '#/$defs/expression' },
    bottom_high: { $ref: '#/$defs/expression' },
    bottom_scale: { type: 'string', pattern: '^[0-9]+$' },
    sure: { $ref: '#/$defs/expression' },
    maybe: { $ref: '#/$defs/expression' },
  },
  required: ['low', 'high', 'scale', 'bottom_low', 'bottom_high', 'bottom_scale', 'sure', 'maybe'],
  additionalProperties: false,
};
const pattern15 = new RegExp('^[0-9]+$', 'u');

function validate227(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate227.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.low === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'low' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.high === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'high' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.scale === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'scale' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.bottom_low === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'bottom_low' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.bottom_high === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'bottom_high' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.bottom_scale === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'bottom_scale' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.sure === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sure' },
      };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.maybe === undefined) {
      const err7 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'maybe' },
      };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'low' ||
        key0 === 'high' ||
        key0 === 'scale' ||
        key0 === 'bottom_low' ||
        key0 === 'bottom_high' ||
        key0 === 'bottom_scale' ||
        key0 === 'sure' ||
        key0 === 'maybe'
      )) {
        const err8 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.low !== undefined) {
      if (
        !validate194(data.low, {
          instancePath: instancePath + '/low',
          parentData: data,
          parentDataProperty: 'low',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.high !== undefined) {
      if (
        !validate194(data.high, {
          instancePath: instancePath + '/high',
          parentData: data,
          parentDataProperty: 'high',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.scale !== undefined) {
      let data2 = data.scale;
      if (typeof data2 === 'string') {
        if (!pattern15.test(data2)) {
          const err9 = {
            instancePath: instancePath + '/scale',
            schemaPath: '#/properties/scale/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]+$' },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
      } else {
        const err10 = {
          instancePath: instancePath + '/scale',
          schemaPath: '#/properties/scale/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.bottom_low !== undefined) {
      if (
        !validate194(data.bottom_low, {
          instancePath: instancePath + '/bottom_low',
          parentData: data,
          parentDataProperty: 'bottom_low',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.bottom_high !== undefined) {
      if (
        !validate194(data.bottom_high, {
          instancePath: instancePath + '/bottom_high',
          parentData: data,
          parentDataProperty: 'bottom_high',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.bottom_scale !== undefined) {
      let data5 = data.bottom_scale;
      if (typeof data5 === 'string') {
        if (!pattern15.test(data5)) {
          const err11 = {
            instancePath: instancePath + '/bottom_scale',
            schemaPath: '#/properties/bottom_scale/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]+$' },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/bottom_scale',
          schemaPath: '#/properties/bottom_scale/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.sure !== undefined) {
      if (
        !validate194(data.sure, {
          instancePath: instancePath + '/sure',
          parentData: data,
          parentDataProperty: 'sure',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
    if (data.maybe !== undefined) {
      if (
        !validate194(data.maybe, {
          instancePath: instancePath + '/maybe',
          parentData: data,
          parentDataProperty: 'maybe',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate194.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err13 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err13];
    } else {
      vErrors.push(err13);
    }
    errors++;
  }
  validate227.errors = vErrors;
  return errors === 0;
}
validate227.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate209(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate209.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.applies === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'applies' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.levels === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'levels' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.rules === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rules' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.measures === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'measures' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'applies' || key0 === 'levels' || key0 === 'rules' || key0 === 'measures')) {
        const err4 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.applies !== undefined) {
      if (
        !validate210(data.applies, {
          instancePath: instancePath + '/applies',
          parentData: data,
          parentDataProperty: 'applies',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate210.errors);
        errors = vErrors.length;
      }
    }
    if (data.levels !== undefined) {
      if (
        !validate214(data.levels, {
          instancePath: instancePath + '/levels',
          parentData: data,
          parentDataProperty: 'levels',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate214.errors);
        errors = vErrors.length;
      }
    }
    if (data.rules !== undefined) {
      let data2 = data.rules;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key1 in data2) {
          if (
            !validate219(data2[key1], {
              instancePath: instancePath + '/rules/' + key1.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate219.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/rules',
          schemaPath: '#/properties/rules/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.measures !== undefined) {
      let data4 = data.measures;
      if (data4 && typeof data4 == 'object' && !Array.isArray(data4)) {
        for (const key2 in data4) {
          if (
            !validate227(data4[key2], {
              instancePath: instancePath + '/measures/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data4,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate227.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate209.errors = vErrors;
  return errors === 0;
}
validate209.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const pattern13 = new RegExp('^sha256:[0-9a-f]{64}$', 'u');

function validate186(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="logic.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate186.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.logic === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'logic' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.protocol === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'protocol' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.edition === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.digest === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.inputs === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'inputs' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.steps === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'steps' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.answers === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'answers' },
      };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'logic' ||
        key0 === 'protocol' ||
        key0 === 'edition' ||
        key0 === 'digest' ||
        key0 === 'inputs' ||
        key0 === 'steps' ||
        key0 === 'answers'
      )) {
        const err7 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.logic !== undefined) {
      let data0 = data.logic;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
        const err8 = {
          instancePath: instancePath + '/logic',
          schemaPath: '#/properties/logic/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
      if (1 !== data0) {
        const err9 = {
          instancePath: instancePath + '/logic',
          schemaPath: '#/properties/logic/const',
          keyword: 'const',
          params: { allowedValue: 1 },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.protocol !== undefined) {
      if (
        !validate187(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate187.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data2 = data.edition;
      if (!(typeof data2 == 'number' && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        const err10 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
      if (typeof data2 == 'number' && isFinite(data2)) {
        if (data2 < 1 || isNaN(data2)) {
          const err11 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      }
    }
    if (data.digest !== undefined) {
      let data3 = data.digest;
      if (typeof data3 === 'string') {
        if (!pattern13.test(data3)) {
          const err12 = {
            instancePath: instancePath + '/digest',
            schemaPath: '#/properties/digest/pattern',
            keyword: 'pattern',
            params: { pattern: '^sha256:[0-9a-f]{64}$' },
          };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
      } else {
        const err13 = {
          instancePath: instancePath + '/digest',
          schemaPath: '#/properties/digest/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.inputs !== undefined) {
      let data4 = data.inputs;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate189(data4[i0], {
              instancePath: instancePath + '/inputs/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate189.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err14 = {
          instancePath: instancePath + '/inputs',
          schemaPath: '#/properties/inputs/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.steps !== undefined) {
      let data6 = data.steps;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate193(data6[i1], {
              instancePath: instancePath + '/steps/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate193.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = {
          instancePath: instancePath + '/steps',
          schemaPath: '#/properties/steps/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.answers !== undefined) {
      if (
        !validate209(data.answers, {
          instancePath: instancePath + '/answers',
          parentData: data,
          parentDataProperty: 'answers',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate209.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err16 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err16];
    } else {
      vErrors.push(err16);
    }
    errors++;
  }
  validate186.errors = vErrors;
  return errors === 0;
}
validate186.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const outcome = validate236;
const schema69 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'outcome.schema.json',
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
    at: { type: ['string', 'null'] },
    applies: { type: 'string', enum: ['yes', 'no', 'unsure'] },
    applies_because: { $ref: '#/$defs/sentences' },
    otherwise: { $ref: 'dictionary.schema.json#/$defs/text' },
    level: { $ref: '#/$defs/level' },
    rules: { type: 'array', items: { $ref: '#/$defs/rule' } },
    measures: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/measure' },
    },
    advice: { type: 'array', items: { $ref: '#/$defs/advice' } },
    ask_first: { $ref: '#/$defs/names' },
    take_first: { $ref: '#/$defs/names' },
    missing: { $ref: '#/$defs/names' },
    unobtainable: { type: 'array', items: { $ref: '#/$defs/without_value' } },
    declined: { type: 'array', items: { $ref: '#/$defs/without_value' } },
    would_tell_more: { $ref: '#/$defs/names' },
    stands_in: { type: 'array', items: { $ref: '#/$defs/earlier' } },
    faults: { type: 'array', items: { $ref: '#/$defs/fault' } },
    assumed: { type: 'array', items: { $ref: '#/$defs/assumed' } },
    limits: { type: 'array', items: { $ref: '#/$defs/limit' } },
    taken: { type: 'array', items: { $ref: '#/$defs/taken' } },
    refused: { type: 'array', items: { $ref: '#/$defs/remark' } },
    questioned: { type: 'array', items: { $ref: '#/$defs/remark' } },
    unused: { $ref: '#/$defs/names' },
    caution: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: [
    'protocol',
    'edition',
    'title',
    'digest',
    'at',
    'applies',
    'level',
    'rules',
    'measures',
    'advice',
    'ask_first',
    'take_first',
    'missing',
    'unobtainable',
    'declined',
    'would_tell_more',
    'stands_in',
    'assumed',
    'limits',
    'taken',
    'refused',
    'questioned',
    'unused',
    'caution',
  ],
  additionalProperties: false,
  $defs: {
    name: { $ref: 'dictionary.schema.json#/$defs/name' },
    names: { type: 'array', items: { $ref: '#/$defs/name' } },
    sentence: { type: 'string', minLength: 1 },
    sentences: { type: 'array', items: { $ref: '#/$defs/sentence' } },
    unit: { type: 'string', maxLength: 40 },
    level: {
      type: ['object', 'null'],
      properties: {
        at_least: { type: ['string', 'null'], maxLength: 60 },
        could_be: { $ref: '#/$defs/name' },
        settled: { type: 'boolean' },
      },
      required: ['at_least', 'could_be', 'settled'],
      additionalProperties: false,
    },
    rule: {
      type: 'object',
      properties: {
        rule: { $ref: '#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        state: { type: 'string', enum: ['met', 'not_met', 'undecided'] },
        level: { $ref: '#/$defs/name' },
        lowered_from: { $ref: '#/$defs/name' },
        counts: { type: 'boolean', const: true },
        decided_by: { $ref: '#/$defs/sentences' },
        waits_for: { $ref: '#/$defs/names' },
        decided_if: { type: 'array', items: { $ref: '#/$defs/decided_if' } },
        no_value: { $ref: '#/$defs/sentences' },
        explained_by: { $ref: '#/$defs/sentence' },
        could_be_explained_by: { $ref: '#/$defs/sentence' },
        taken_back_by: { $ref: '#/$defs/sentence' },
        could_be_taken_back_by: { $ref: '#/$defs/sentence' },
        not_reliable: { $ref: '#/$defs/sentences' },
      },
      required: ['rule', 'title', 'state'],
      additionalProperties: false,
    },
    decided_if: {
      type: 'object',
      properties: {
        observation: { $ref: '#/$defs/name' },
        from: { type: 'number' },
        to: { type: 'number' },
        is_lowest: { type: 'boolean', const: true },
        is_highest: { type: 'boolean', const: true },
        unit: { $ref: '#/$defs/unit' },
        choices: { $ref: '#/$defs/names' },
        state: { type: 'string', enum: ['met', 'not_met'] },
      },
      required: ['observation', 'state'],
      additionalProperties: false,
    },
    measure: {
      type: 'object',
      properties: {
        value: { type: 'number' },
        exact: { $ref: '#/$defs/exact_fraction' },
        low: { type: 'number' },
        low_exact: { $ref: '#/$defs/exact_fraction' },
        high: { type: 'number' },
        high_exact: { $ref: '#/$defs/exact_fraction' },
        unit: { $ref: '#/$defs/unit' },
        never: { type: 'boolean', const: true },
        missing: { type: 'boolean', const: true },
        waits_for: { $ref: '#/$defs/names' },
        may_be_missing: { type: 'boolean', const: true },
      },
      additionalProperties: false,
    },
    exact_fraction: { type: 'string', pattern: '^-?[0-9]+/[0-9]+$' },
    advice: {
      type: 'object',
      properties: {
        rule: { $ref: '#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        level: { $ref: '#/$defs/name' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        because: { $ref: 'dictionary.schema.json#/$defs/text' },
        explained_by: { $ref: '#/$defs/sentence' },
        ask: { $ref: '#/$defs/sentences' },
        do: { $ref: '#/$defs/sentences' },
      },
      required: ['rule', 'title', 'ask', 'do'],
      additionalProperties: false,
    },
    without_value: {
      type: 'object',
      properties: { observation: { $ref: '#/$defs/name' }, because: { type: 'string' } },
      required: ['observation'],
      additionalProperties: false,
    },
    earlier: {
      type: 'object',
      properties: {
        observation: { $ref: '#/$defs/name' },
        at: { type: 'string' },
        value: { type: ['number', 'string', 'array'], items: { $ref: '#/$defs/name' } },
        low: { type: 'number' },
        high: { type: 'number' },
        unit: { $ref: '#/$defs/unit' },
      },
      required: ['observation', 'at'],
      additionalProperties: false,
    },
    fault: {
      type: 'object',
      properties: {
        fault: { $ref: '#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        do: { $ref: '#/$defs/sentences' },
        readings: { type: 'array', items: { $ref: '#/$defs/reading' } },
        changes: { type: 'array', items: { $ref: '#/$defs/doubted' } },
      },
      required: ['fault', 'title', 'says', 'do', 'readings', 'changes'],
      additionalProperties: false,
    },
    reading: {
      type: 'object',
      properties: {
        observation: { $ref: '#/$defs/name' },
        read: { type: 'number' },
        low: { type: 'number' },
        high: { type: 'number' },
        unit: { $ref: '#/$defs/unit' },
      },
      required: ['observation', 'low', 'high'],
      additionalProperties: false,
    },
    doubted: {
      type: 'object',
      properties: {
        rule: { $ref: '#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        level: { $ref: '#/$defs/name' },
      },
      required: ['rule', 'title'],
      additionalProperties: false,
    },
    assumed: {
      type: 'object',
      properties: {
        observation: { $ref: '#/$defs/name' },
        value: { type: ['number', 'string'] },
        unit: { $ref: '#/$defs/unit' },
      },
      required: ['observation', 'value'],
      additionalProperties: false,
    },
    limit: {
      type: 'object',
      properties: {
        limit: { $ref: '#/$defs/name' },
        value: { type: 'number' },
        unit: { $ref: '#/$defs/unit' },
        by: { type: 'string' },
        reason: { type: 'string' },
        until: { type: 'string' },
      },
      required: ['limit', 'value', 'by'],
      additionalProperties: false,
    },
    taken: {
      type: 'object',
      properties: {
        observation: { $ref: '#/$defs/name' },
        given: { type: 'string' },
        as: { type: 'string' },
      },
      required: ['observation', 'given', 'as'],
      additionalProperties: false,
    },
    remark: {
      type: 'object',
      properties: {
        observation: { $ref: '#/$defs/name' },
        given: { type: 'string' },
        because: { $ref: '#/$defs/sentence' },
      },
      required: ['observation', 'given', 'because'],
      additionalProperties: false,
    },
  },
};

function validate237(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate237.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate237.errors = vErrors;
  return errors === 0;
}
validate237.evaluated = { dynamicProps: false, dynamicItems: false };

function validate239(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate239.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate239.errors = vErrors;
  return errors === 0;
}
validate239.evaluated = { dynamicProps: false, dynamicItems: false };

const schema72 = { type: 'array', items: { $ref: '#/$defs/sentence' } };
const schema73 = { type: 'string', minLength: 1 };

function validate242(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate242.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) < 1) {
      const err0 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate242.errors = vErrors;
  return errors === 0;
}
validate242.evaluated = { dynamicProps: false, dynamicItems: false };

function validate241(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate241.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate242(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  validate241.errors = vErrors;
  return errors === 0;
}
validate241.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema74 = {
  type: ['object', 'null'],
  properties: {
    at_least: { type: ['string', 'null'], maxLength: 60 },
    could_be: { $ref: '#/$defs/name' },
    settled: { type: 'boolean' },
  },
  required: ['at_least', 'could_be', 'settled'],
  additionalProperties: false,
};

function validate247(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate247.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate247.errors = vErrors;
  return errors === 0;
}
validate247.evaluated = { dynamicProps: false, dynamicItems: false };

function validate246(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate246.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!(data && typeof data == 'object' && !Array.isArray(data)) && data !== null) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema74.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.at_least === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'at_least' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.could_be === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'could_be' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.settled === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'settled' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'at_least' || key0 === 'could_be' || key0 === 'settled')) {
        const err4 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.at_least !== undefined) {
      let data0 = data.at_least;
      if (typeof data0 !== 'string' && data0 !== null) {
        const err5 = {
          instancePath: instancePath + '/at_least',
          schemaPath: '#/properties/at_least/type',
          keyword: 'type',
          params: { type: schema74.properties.at_least.type },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
      if (typeof data0 === 'string') {
        if (func1(data0) > 60) {
          const err6 = {
            instancePath: instancePath + '/at_least',
            schemaPath: '#/properties/at_least/maxLength',
            keyword: 'maxLength',
            params: { limit: 60 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      }
    }
    if (data.could_be !== undefined) {
      if (
        !validate247(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.settled !== undefined) {
      if (typeof data.settled !== 'boolean') {
        const err7 = {
          instancePath: instancePath + '/settled',
          schemaPath: '#/properties/settled/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
  }
  validate246.errors = vErrors;
  return errors === 0;
}
validate246.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema76 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    state: { type: 'string', enum: ['met', 'not_met', 'undecided'] },
    level: { $ref: '#/$defs/name' },
    lowered_from: { $ref: '#/$defs/name' },
    counts: { type: 'boolean', const: true },
    decided_by: { $ref: '#/$defs/sentences' },
    waits_for: { $ref: '#/$defs/names' },
    decided_if: { type: 'array', items: { $ref: '#/$defs/decided_if' } },
    no_value: { $ref: '#/$defs/sentences' },
    explained_by: { $ref: '#/$defs/sentence' },
    could_be_explained_by: { $ref: '#/$defs/sentence' },
    taken_back_by: { $ref: '#/$defs/sentence' },
    could_be_taken_back_by: { $ref: '#/$defs/sentence' },
    not_reliable: { $ref: '#/$defs/sentences' },
  },
  required: ['rule', 'title', 'state'],
  additionalProperties: false,
};
const schema77 = { type: 'array', items: { $ref: '#/$defs/name' } };

function validate256(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate256.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate247(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  validate256.errors = vErrors;
  return errors === 0;
}
validate256.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema78 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    from: { type: 'number' },
    to: { type: 'number' },
    is_lowest: { type: 'boolean', const: true },
    is_highest: { type: 'boolean', const: true },
    unit: { $ref: '#/$defs/unit' },
    choices: { $ref: '#/$defs/names' },
    state: { type: 'string', enum: ['met', 'not_met'] },
  },
  required: ['observation', 'state'],
  additionalProperties: false,
};
const schema79 = { type: 'string', maxLength: 40 };

function validate261(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate261.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 40) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 40 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate261.errors = vErrors;
  return errors === 0;
}
validate261.evaluated = { dynamicProps: false, dynamicItems: false };

function validate259(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate259.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.state === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'state' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'observation' ||
        key0 === 'from' ||
        key0 === 'to' ||
        key0 === 'is_lowest' ||
        key0 === 'is_highest' ||
        key0 === 'unit' ||
        key0 === 'choices' ||
        key0 === 'state'
      )) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      let data1 = data.from;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/from',
          schemaPath: '#/properties/from/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.to !== undefined) {
      let data2 = data.to;
      if (!(typeof data2 == 'number' && isFinite(data2))) {
        const err4 = {
          instancePath: instancePath + '/to',
          schemaPath: '#/properties/to/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.is_lowest !== undefined) {
      let data3 = data.is_lowest;
      if (typeof data3 !== 'boolean') {
        const err5 = {
          instancePath: instancePath + '/is_lowest',
          schemaPath: '#/properties/is_lowest/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
      if (true !== data3) {
        const err6 = {
          instancePath: instancePath + '/is_lowest',
          schemaPath: '#/properties/is_lowest/const',
          keyword: 'const',
          params: { allowedValue: true },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.is_highest !== undefined) {
      let data4 = data.is_highest;
      if (typeof data4 !== 'boolean') {
        const err7 = {
          instancePath: instancePath + '/is_highest',
          schemaPath: '#/properties/is_highest/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
      if (true !== data4) {
        const err8 = {
          instancePath: instancePath + '/is_highest',
          schemaPath: '#/properties/is_highest/const',
          keyword: 'const',
          params: { allowedValue: true },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate261(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate261.errors);
        errors = vErrors.length;
      }
    }
    if (data.choices !== undefined) {
      if (
        !validate256(data.choices, {
          instancePath: instancePath + '/choices',
          parentData: data,
          parentDataProperty: 'choices',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.state !== undefined) {
      let data7 = data.state;
      if (typeof data7 !== 'string') {
        const err9 = {
          instancePath: instancePath + '/state',
          schemaPath: '#/properties/state/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
      if (!(data7 === 'met' || data7 === 'not_met')) {
        const err10 = {
          instancePath: instancePath + '/state',
          schemaPath: '#/properties/state/enum',
          keyword: 'enum',
          params: { allowedValues: schema78.properties.state.enum },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
  }
  validate259.errors = vErrors;
  return errors === 0;
}
validate259.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate250(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate250.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.rule === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.state === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'state' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema76.properties, key0)) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate247(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate239(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.state !== undefined) {
      let data2 = data.state;
      if (typeof data2 !== 'string') {
        const err4 = {
          instancePath: instancePath + '/state',
          schemaPath: '#/properties/state/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      if (!(data2 === 'met' || data2 === 'not_met' || data2 === 'undecided')) {
        const err5 = {
          instancePath: instancePath + '/state',
          schemaPath: '#/properties/state/enum',
          keyword: 'enum',
          params: { allowedValues: schema76.properties.state.enum },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate247(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.lowered_from !== undefined) {
      if (
        !validate247(data.lowered_from, {
          instancePath: instancePath + '/lowered_from',
          parentData: data,
          parentDataProperty: 'lowered_from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.counts !== undefined) {
      let data5 = data.counts;
      if (typeof data5 !== 'boolean') {
        const err6 = {
          instancePath: instancePath + '/counts',
          schemaPath: '#/properties/counts/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
      if (true !== data5) {
        const err7 = {
          instancePath: instancePath + '/counts',
          schemaPath: '#/properties/counts/const',
          keyword: 'const',
          params: { allowedValue: true },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.decided_by !== undefined) {
      if (
        !validate241(data.decided_by, {
          instancePath: instancePath + '/decided_by',
          parentData: data,
          parentDataProperty: 'decided_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
    if (data.waits_for !== undefined) {
      if (
        !validate256(data.waits_for, {
          instancePath: instancePath + '/waits_for',
          parentData: data,
          parentDataProperty: 'waits_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.decided_if !== undefined) {
      let data8 = data.decided_if;
      if (Array.isArray(data8)) {
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate259(data8[i0], {
              instancePath: instancePath + '/decided_if/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate259.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/decided_if',
          schemaPath: '#/properties/decided_if/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.no_value !== undefined) {
      if (
        !validate241(data.no_value, {
          instancePath: instancePath + '/no_value',
          parentData: data,
          parentDataProperty: 'no_value',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate242(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be_explained_by !== undefined) {
      if (
        !validate242(data.could_be_explained_by, {
          instancePath: instancePath + '/could_be_explained_by',
          parentData: data,
          parentDataProperty: 'could_be_explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
    if (data.taken_back_by !== undefined) {
      if (
        !validate242(data.taken_back_by, {
          instancePath: instancePath + '/taken_back_by',
          parentData: data,
          parentDataProperty: 'taken_back_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be_taken_back_by !== undefined) {
      if (
        !validate242(data.could_be_taken_back_by, {
          instancePath: instancePath + '/could_be_taken_back_by',
          parentData: data,
          parentDataProperty: 'could_be_taken_back_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable !== undefined) {
      if (
        !validate241(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err9 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err9];
    } else {
      vErrors.push(err9);
    }
    errors++;
  }
  validate250.errors = vErrors;
  return errors === 0;
}
validate250.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema80 = {
  type: 'object',
  properties: {
    value: { type: 'number' },
    exact: { $ref: '#/$defs/exact_fraction' },
    low: { type: 'number' },
    low_exact: { $ref: '#/$defs/exact_fraction' },
    high: { type: 'number' },
    high_exact: { $ref: '#/$defs/exact_fraction' },
    unit: { $ref: '#/$defs/unit' },
    never: { type: 'boolean', const: true },
    missing: { type: 'boolean', const: true },
    waits_for: { $ref: '#/$defs/names' },
    may_be_missing: { type: 'boolean', const: true },
  },
  additionalProperties: false,
};
const schema81 = { type: 'string', pattern: '^-?[0-9]+/[0-9]+$' };
const pattern20 = new RegExp('^-?[0-9]+/[0-9]+$', 'u');

function validate274(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate274.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (!pattern20.test(data)) {
      const err0 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^-?[0-9]+/[0-9]+$' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate274.errors = vErrors;
  return errors === 0;
}
validate274.evaluated = { dynamicProps: false, dynamicItems: false };

function validate273(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate273.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!func5.call(schema80.properties, key0)) {
        const err0 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    }
    if (data.value !== undefined) {
      let data0 = data.value;
      if (!(typeof data0 == 'number' && isFinite(data0))) {
        const err1 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.exact !== undefined) {
      if (
        !validate274(data.exact, {
          instancePath: instancePath + '/exact',
          parentData: data,
          parentDataProperty: 'exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate274.errors);
        errors = vErrors.length;
      }
    }
    if (data.low !== undefined) {
      let data2 = data.low;
      if (!(typeof data2 == 'number' && isFinite(data2))) {
        const err2 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.low_exact !== undefined) {
      if (
        !validate274(data.low_exact, {
          instancePath: instancePath + '/low_exact',
          parentData: data,
          parentDataProperty: 'low_exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate274.errors);
        errors = vErrors.length;
      }
    }
    if (data.high !== undefined) {
      let data4 = data.high;
      if (!(typeof data4 == 'number' && isFinite(data4))) {
        const err3 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.high_exact !== undefined) {
      if (
        !validate274(data.high_exact, {
          instancePath: instancePath + '/high_exact',
          parentData: data,
          parentDataProperty: 'high_exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate274.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate261(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate261.errors);
        errors = vErrors.length;
      }
    }
    if (data.never !== undefined) {
      let data7 = data.never;
      if (typeof data7 !== 'boolean') {
        const err4 = {
          instancePath: instancePath + '/never',
          schemaPath: '#/properties/never/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      if (true !== data7) {
        const err5 = {
          instancePath: instancePath + '/never',
          schemaPath: '#/properties/never/const',
          keyword: 'const',
          params: { allowedValue: true },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.missing !== undefined) {
      let data8 = data.missing;
      if (typeof data8 !== 'boolean') {
        const err6 = {
          instancePath: instancePath + '/missing',
          schemaPath: '#/properties/missing/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
      if (true !== data8) {
        const err7 = {
          instancePath: instancePath + '/missing',
          schemaPath: '#/properties/missing/const',
          keyword: 'const',
          params: { allowedValue: true },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.waits_for !== undefined) {
      if (
        !validate256(data.waits_for, {
          instancePath: instancePath + '/waits_for',
          parentData: data,
          parentDataProperty: 'waits_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_be_missing !== undefined) {
      let data10 = data.may_be_missing;
      if (typeof data10 !== 'boolean') {
        const err8 = {
          instancePath: instancePath + '/may_be_missing',
          schemaPath: '#/properties/may_be_missing/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
      if (true !== data10) {
        const err9 = {
          instancePath: instancePath + '/may_be_missing',
          schemaPath: '#/properties/may_be_missing/const',
          keyword: 'const',
          params: { allowedValue: true },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
  } else {
    const err10 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err10];
    } else {
      vErrors.push(err10);
    }
    errors++;
  }
  validate273.errors = vErrors;
  return errors === 0;
}
validate273.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema82 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    level: { $ref: '#/$defs/name' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    because: { $ref: 'dictionary.schema.json#/$defs/text' },
    explained_by: { $ref: '#/$defs/sentence' },
    ask: { $ref: '#/$defs/sentences' },
    do: { $ref: '#/$defs/sentences' },
  },
  required: ['rule', 'title', 'ask', 'do'],
  additionalProperties: false,
};

function validate281(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate281.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.rule === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.ask === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ask' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.do === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'do' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'rule' ||
        key0 === 'title' ||
        key0 === 'level' ||
        key0 === 'says' ||
        key0 === 'because' ||
        key0 === 'explained_by' ||
        key0 === 'ask' ||
        key0 === 'do'
      )) {
        const err4 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate247(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate239(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate247(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate239(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate239(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate242(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask !== undefined) {
      if (
        !validate241(data.ask, {
          instancePath: instancePath + '/ask',
          parentData: data,
          parentDataProperty: 'ask',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      if (
        !validate241(data.do, {
          instancePath: instancePath + '/do',
          parentData: data,
          parentDataProperty: 'do',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate281.errors = vErrors;
  return errors === 0;
}
validate281.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema83 = {
  type: 'object',
  properties: { observation: { $ref: '#/$defs/name' }, because: { type: 'string' } },
  required: ['observation'],
  additionalProperties: false,
};

function validate294(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate294.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'observation' || key0 === 'because')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (typeof data.because !== 'string') {
        const err2 = {
          instancePath: instancePath + '/because',
          schemaPath: '#/properties/because/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate294.errors = vErrors;
  return errors === 0;
}
validate294.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema84 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    at: { type: 'string' },
    value: { type: ['number', 'string', 'array'], items: { $ref: '#/$defs/name' } },
    low: { type: 'number' },
    high: { type: 'number' },
    unit: { $ref: '#/$defs/unit' },
  },
  required: ['observation', 'at'],
  additionalProperties: false,
};

function validate299(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate299.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.at === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'at' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'observation' ||
        key0 === 'at' ||
        key0 === 'value' ||
        key0 === 'low' ||
        key0 === 'high' ||
        key0 === 'unit'
      )) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.at !== undefined) {
      if (typeof data.at !== 'string') {
        const err3 = {
          instancePath: instancePath + '/at',
          schemaPath: '#/properties/at/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.value !== undefined) {
      let data2 = data.value;
      if (
        !(typeof data2 == 'number' && isFinite(data2)) &&
        typeof data2 !== 'string' &&
        !Array.isArray(data2)
      ) {
        const err4 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
          keyword: 'type',
          params: { type: schema84.properties.value.type },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      if (Array.isArray(data2)) {
        const len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate247(data2[i0], {
              instancePath: instancePath + '/value/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate247.errors);
            errors = vErrors.length;
          }
        }
      }
    }
    if (data.low !== undefined) {
      let data4 = data.low;
      if (!(typeof data4 == 'number' && isFinite(data4))) {
        const err5 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.high !== undefined) {
      let data5 = data.high;
      if (!(typeof data5 == 'number' && isFinite(data5))) {
        const err6 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate261(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate261.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate299.errors = vErrors;
  return errors === 0;
}
validate299.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema85 = {
  type: 'object',
  properties: {
    fault: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    do: { $ref: '#/$defs/sentences' },
    readings: { type: 'array', items: { $ref: '#/$defs/reading' } },
    changes: { type: 'array', items: { $ref: '#/$defs/doubted' } },
  },
  required: ['fault', 'title', 'says', 'do', 'readings', 'changes'],
  additionalProperties: false,
};
const schema86 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    read: { type: 'number' },
    low: { type: 'number' },
    high: { type: 'number' },
    unit: { $ref: '#/$defs/unit' },
  },
  required: ['observation', 'low', 'high'],
  additionalProperties: false,
};

function validate309(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate309.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.low === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'low' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.high === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'high' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'observation' ||
        key0 === 'read' ||
        key0 === 'low' ||
        key0 === 'high' ||
        key0 === 'unit'
      )) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.read !== undefined) {
      let data1 = data.read;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/read',
          schemaPath: '#/properties/read/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.low !== undefined) {
      let data2 = data.low;
      if (!(typeof data2 == 'number' && isFinite(data2))) {
        const err5 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.high !== undefined) {
      let data3 = data.high;
      if (!(typeof data3 == 'number' && isFinite(data3))) {
        const err6 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate261(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate261.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate309.errors = vErrors;
  return errors === 0;
}
validate309.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema87 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    level: { $ref: '#/$defs/name' },
  },
  required: ['rule', 'title'],
  additionalProperties: false,
};

function validate313(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate313.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.rule === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'rule' || key0 === 'title' || key0 === 'level')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate247(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate239(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate247(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate313.errors = vErrors;
  return errors === 0;
}
validate313.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate304(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate304.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.fault === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'fault' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.says === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'says' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.do === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'do' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.readings === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'readings' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.changes === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'changes' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'fault' ||
        key0 === 'title' ||
        key0 === 'says' ||
        key0 === 'do' ||
        key0 === 'readings' ||
        key0 === 'changes'
      )) {
        const err6 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.fault !== undefined) {
      if (
        !validate247(data.fault, {
          instancePath: instancePath + '/fault',
          parentData: data,
          parentDataProperty: 'fault',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate239(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate239(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      if (
        !validate241(data.do, {
          instancePath: instancePath + '/do',
          parentData: data,
          parentDataProperty: 'do',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
    if (data.readings !== undefined) {
      let data4 = data.readings;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate309(data4[i0], {
              instancePath: instancePath + '/readings/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate309.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/readings',
          schemaPath: '#/properties/readings/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.changes !== undefined) {
      let data6 = data.changes;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate313(data6[i1], {
              instancePath: instancePath + '/changes/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate313.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/changes',
          schemaPath: '#/properties/changes/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
  } else {
    const err9 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err9];
    } else {
      vErrors.push(err9);
    }
    errors++;
  }
  validate304.errors = vErrors;
  return errors === 0;
}
validate304.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema88 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    value: { type: ['number', 'string'] },
    unit: { $ref: '#/$defs/unit' },
  },
  required: ['observation', 'value'],
  additionalProperties: false,
};

function validate319(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate319.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.value === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'value' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'observation' || key0 === 'value' || key0 === 'unit')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.value !== undefined) {
      let data1 = data.value;
      if (!(typeof data1 == 'number' && isFinite(data1)) && typeof data1 !== 'string') {
        const err3 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
          keyword: 'type',
          params: { type: schema88.properties.value.type },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate261(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate261.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err4 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err4];
    } else {
      vErrors.push(err4);
    }
    errors++;
  }
  validate319.errors = vErrors;
  return errors === 0;
}
validate319.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema89 = {
  type: 'object',
  properties: {
    limit: { $ref: '#/$defs/name' },
    value: { type: 'number' },
    unit: { $ref: '#/$defs/unit' },
    by: { type: 'string' },
    reason: { type: 'string' },
    until: { type: 'string' },
  },
  required: ['limit', 'value', 'by'],
  additionalProperties: false,
};

function validate323(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate323.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.limit === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'limit' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.value === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'value' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.by === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'by' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'limit' ||
        key0 === 'value' ||
        key0 === 'unit' ||
        key0 === 'by' ||
        key0 === 'reason' ||
        key0 === 'until'
      )) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.limit !== undefined) {
      if (
        !validate247(data.limit, {
          instancePath: instancePath + '/limit',
          parentData: data,
          parentDataProperty: 'limit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.value !== undefined) {
      let data1 = data.value;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate261(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate261.errors);
        errors = vErrors.length;
      }
    }
    if (data.by !== undefined) {
      if (typeof data.by !== 'string') {
        const err5 = {
          instancePath: instancePath + '/by',
          schemaPath: '#/properties/by/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.reason !== undefined) {
      if (typeof data.reason !== 'string') {
        const err6 = {
          instancePath: instancePath + '/reason',
          schemaPath: '#/properties/reason/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.until !== undefined) {
      if (typeof data.until !== 'string') {
        const err7 = {
          instancePath: instancePath + '/until',
          schemaPath: '#/properties/until/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
  } else {
    const err8 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err8];
    } else {
      vErrors.push(err8);
    }
    errors++;
  }
  validate323.errors = vErrors;
  return errors === 0;
}
validate323.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema90 = {
  type: 'object',
  properties: { observation: { $ref: '#/$defs/name' }, given: { type: 'string' }, as: { type: 'string' } },
  required: ['observation', 'given', 'as'],
  additionalProperties: false,
};

function validate327(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate327.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.given === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'given' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.as === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'as' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'observation' || key0 === 'given' || key0 === 'as')) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.given !== undefined) {
      if (typeof data.given !== 'string') {
        const err4 = {
          instancePath: instancePath + '/given',
          schemaPath: '#/properties/given/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.as !== undefined) {
      if (typeof data.as !== 'string') {
        const err5 = {
          instancePath: instancePath + '/as',
          schemaPath: '#/properties/as/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate327.errors = vErrors;
  return errors === 0;
}
validate327.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema91 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    given: { type: 'string' },
    because: { $ref: '#/$defs/sentence' },
  },
  required: ['observation', 'given', 'because'],
  additionalProperties: false,
};

function validate330(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate330.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.observation === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observation' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.given === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'given' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.because === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'because' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'observation' || key0 === 'given' || key0 === 'because')) {
        const err3 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.observation !== undefined) {
      if (
        !validate247(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate247.errors);
        errors = vErrors.length;
      }
    }
    if (data.given !== undefined) {
      if (typeof data.given !== 'string') {
        const err4 = {
          instancePath: instancePath + '/given',
          schemaPath: '#/properties/given/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate242(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate242.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate330.errors = vErrors;
  return errors === 0;
}
validate330.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate236(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="outcome.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate236.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.protocol === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'protocol' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.edition === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.digest === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.at === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'at' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.applies === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'applies' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.level === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'level' },
      };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.rules === undefined) {
      const err7 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rules' },
      };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.measures === undefined) {
      const err8 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'measures' },
      };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.advice === undefined) {
      const err9 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'advice' },
      };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.ask_first === undefined) {
      const err10 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ask_first' },
      };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.take_first === undefined) {
      const err11 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'take_first' },
      };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.missing === undefined) {
      const err12 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'missing' },
      };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    if (data.unobtainable === undefined) {
      const err13 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'unobtainable' },
      };
      if (vErrors === null) {
        vErrors = [err13];
      } else {
        vErrors.push(err13);
      }
      errors++;
    }
    if (data.declined === undefined) {
      const err14 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'declined' },
      };
      if (vErrors === null) {
        vErrors = [err14];
      } else {
        vErrors.push(err14);
      }
      errors++;
    }
    if (data.would_tell_more === undefined) {
      const err15 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'would_tell_more' },
      };
      if (vErrors === null) {
        vErrors = [err15];
      } else {
        vErrors.push(err15);
      }
      errors++;
    }
    if (data.stands_in === undefined) {
      const err16 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'stands_in' },
      };
      if (vErrors === null) {
        vErrors = [err16];
      } else {
        vErrors.push(err16);
      }
      errors++;
    }
    if (data.assumed === undefined) {
      const err17 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'assumed' },
      };
      if (vErrors === null) {
        vErrors = [err17];
      } else {
        vErrors.push(err17);
      }
      errors++;
    }
    if (data.limits === undefined) {
      const err18 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'limits' },
      };
      if (vErrors === null) {
        vErrors = [err18];
      } else {
        vErrors.push(err18);
      }
      errors++;
    }
    if (data.taken === undefined) {
      const err19 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'taken' },
      };
      if (vErrors === null) {
        vErrors = [err19];
      } else {
        vErrors.push(err19);
      }
      errors++;
    }
    if (data.refused === undefined) {
      const err20 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'refused' },
      };
      if (vErrors === null) {
        vErrors = [err20];
      } else {
        vErrors.push(err20);
      }
      errors++;
    }
    if (data.questioned === undefined) {
      const err21 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'questioned' },
      };
      if (vErrors === null) {
        vErrors = [err21];
      } else {
        vErrors.push(err21);
      }
      errors++;
    }
    if (data.unused === undefined) {
      const err22 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'unused' },
      };
      if (vErrors === null) {
        vErrors = [err22];
      } else {
        vErrors.push(err22);
      }
      errors++;
    }
    if (data.caution === undefined) {
      const err23 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'caution' },
      };
      if (vErrors === null) {
        vErrors = [err23];
      } else {
        vErrors.push(err23);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema69.properties, key0)) {
        const err24 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err24];
        } else {
          vErrors.push(err24);
        }
        errors++;
      }
    }
    if (data.protocol !== undefined) {
      if (
        !validate237(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate237.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err25 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 100000 || isNaN(data1)) {
          const err26 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err26];
          } else {
            vErrors.push(err26);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err27 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err27];
          } else {
            vErrors.push(err27);
          }
          errors++;
        }
      }
    }
    if (data.title !== undefined) {
      if (
        !validate239(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.digest !== undefined) {
      let data3 = data.digest;
      if (typeof data3 === 'string') {
        if (!pattern13.test(data3)) {
          const err28 = {
            instancePath: instancePath + '/digest',
            schemaPath: '#/properties/digest/pattern',
            keyword: 'pattern',
            params: { pattern: '^sha256:[0-9a-f]{64}$' },
          };
          if (vErrors === null) {
            vErrors = [err28];
          } else {
            vErrors.push(err28);
          }
          errors++;
        }
      } else {
        const err29 = {
          instancePath: instancePath + '/digest',
          schemaPath: '#/properties/digest/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err29];
        } else {
          vErrors.push(err29);
        }
        errors++;
      }
    }
    if (data.at !== undefined) {
      let data4 = data.at;
      if (typeof data4 !== 'string' && data4 !== null) {
        const err30 = {
          instancePath: instancePath + '/at',
          schemaPath: '#/properties/at/type',
          keyword: 'type',
          params: { type: schema69.properties.at.type },
        };
        if (vErrors === null) {
          vErrors = [err30];
        } else {
          vErrors.push(err30);
        }
        errors++;
      }
    }
    if (data.applies !== undefined) {
      let data5 = data.applies;
      if (typeof data5 !== 'string') {
        const err31 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err31];
        } else {
          vErrors.push(err31);
        }
        errors++;
      }
      if (!(data5 === 'yes' || data5 === 'no' || data5 === 'unsure')) {
        const err32 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/enum',
          keyword: 'enum',
          params: { allowedValues: schema69.properties.applies.enum },
        };
        if (vErrors === null) {
          vErrors = [err32];
        } else {
          vErrors.push(err32);
        }
        errors++;
      }
    }
    if (data.applies_because !== undefined) {
      if (
        !validate241(data.applies_because, {
          instancePath: instancePath + '/applies_because',
          parentData: data,
          parentDataProperty: 'applies_because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate241.errors);
        errors = vErrors.length;
      }
    }
    if (data.otherwise !== undefined) {
      if (
        !validate239(data.otherwise, {
          instancePath: instancePath + '/otherwise',
          parentData: data,
          parentDataProperty: 'otherwise',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate246(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate246.errors);
        errors = vErrors.length;
      }
    }
    if (data.rules !== undefined) {
      let data9 = data.rules;
      if (Array.isArray(data9)) {
        const len0 = data9.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate250(data9[i0], {
              instancePath: instancePath + '/rules/' + i0,
              parentData: data9,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate250.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err33 = {
          instancePath: instancePath + '/rules',
          schemaPath: '#/properties/rules/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err33];
        } else {
          vErrors.push(err33);
        }
        errors++;
      }
    }
    if (data.measures !== undefined) {
      let data11 = data.measures;
      if (data11 && typeof data11 == 'object' && !Array.isArray(data11)) {
        for (const key1 in data11) {
          const _errs20 = errors;
          if (
            !validate237(key1, {
              instancePath: instancePath + '/measures',
              parentData: data11,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate237.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs20 === errors;
          if (!valid3) {
            const err34 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err34];
            } else {
              vErrors.push(err34);
            }
            errors++;
          }
        }
        for (const key2 in data11) {
          if (
            !validate273(data11[key2], {
              instancePath: instancePath + '/measures/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data11,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate273.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err35 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err35];
        } else {
          vErrors.push(err35);
        }
        errors++;
      }
    }
    if (data.advice !== undefined) {
      let data13 = data.advice;
      if (Array.isArray(data13)) {
        const len1 = data13.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate281(data13[i1], {
              instancePath: instancePath + '/advice/' + i1,
              parentData: data13,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate281.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err36 = {
          instancePath: instancePath + '/advice',
          schemaPath: '#/properties/advice/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err36];
        } else {
          vErrors.push(err36);
        }
        errors++;
      }
    }
    if (data.ask_first !== undefined) {
      if (
        !validate256(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.take_first !== undefined) {
      if (
        !validate256(data.take_first, {
          instancePath: instancePath + '/take_first',
          parentData: data,
          parentDataProperty: 'take_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.missing !== undefined) {
      if (
        !validate256(data.missing, {
          instancePath: instancePath + '/missing',
          parentData: data,
          parentDataProperty: 'missing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.unobtainable !== undefined) {
      let data18 = data.unobtainable;
      if (Array.isArray(data18)) {
        const len2 = data18.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate294(data18[i2], {
              instancePath: instancePath + '/unobtainable/' + i2,
              parentData: data18,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate294.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err37 = {
          instancePath: instancePath + '/unobtainable',
          schemaPath: '#/properties/unobtainable/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err37];
        } else {
          vErrors.push(err37);
        }
        errors++;
      }
    }
    if (data.declined !== undefined) {
      let data20 = data.declined;
      if (Array.isArray(data20)) {
        const len3 = data20.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate294(data20[i3], {
              instancePath: instancePath + '/declined/' + i3,
              parentData: data20,
              parentDataProperty: i3,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate294.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err38 = {
          instancePath: instancePath + '/declined',
          schemaPath: '#/properties/declined/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err38];
        } else {
          vErrors.push(err38);
        }
        errors++;
      }
    }
    if (data.would_tell_more !== undefined) {
      if (
        !validate256(data.would_tell_more, {
          instancePath: instancePath + '/would_tell_more',
          parentData: data,
          parentDataProperty: 'would_tell_more',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.stands_in !== undefined) {
      let data23 = data.stands_in;
      if (Array.isArray(data23)) {
        const len4 = data23.length;
        for (let i4 = 0; i4 < len4; i4++) {
          if (
            !validate299(data23[i4], {
              instancePath: instancePath + '/stands_in/' + i4,
              parentData: data23,
              parentDataProperty: i4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate299.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err39 = {
          instancePath: instancePath + '/stands_in',
          schemaPath: '#/properties/stands_in/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err39];
        } else {
          vErrors.push(err39);
        }
        errors++;
      }
    }
    if (data.faults !== undefined) {
      let data25 = data.faults;
      if (Array.isArray(data25)) {
        const len5 = data25.length;
        for (let i5 = 0; i5 < len5; i5++) {
          if (
            !validate304(data25[i5], {
              instancePath: instancePath + '/faults/' + i5,
              parentData: data25,
              parentDataProperty: i5,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate304.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err40 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err40];
        } else {
          vErrors.push(err40);
        }
        errors++;
      }
    }
    if (data.assumed !== undefined) {
      let data27 = data.assumed;
      if (Array.isArray(data27)) {
        const len6 = data27.length;
        for (let i6 = 0; i6 < len6; i6++) {
          if (
            !validate319(data27[i6], {
              instancePath: instancePath + '/assumed/' + i6,
              parentData: data27,
              parentDataProperty: i6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate319.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err41 = {
          instancePath: instancePath + '/assumed',
          schemaPath: '#/properties/assumed/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err41];
        } else {
          vErrors.push(err41);
        }
        errors++;
      }
    }
    if (data.limits !== undefined) {
      let data29 = data.limits;
      if (Array.isArray(data29)) {
        const len7 = data29.length;
        for (let i7 = 0; i7 < len7; i7++) {
          if (
            !validate323(data29[i7], {
              instancePath: instancePath + '/limits/' + i7,
              parentData: data29,
              parentDataProperty: i7,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate323.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err42 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err42];
        } else {
          vErrors.push(err42);
        }
        errors++;
      }
    }
    if (data.taken !== undefined) {
      let data31 = data.taken;
      if (Array.isArray(data31)) {
        const len8 = data31.length;
        for (let i8 = 0; i8 < len8; i8++) {
          if (
            !validate327(data31[i8], {
              instancePath: instancePath + '/taken/' + i8,
              parentData: data31,
              parentDataProperty: i8,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate327.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err43 = {
          instancePath: instancePath + '/taken',
          schemaPath: '#/properties/taken/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err43];
        } else {
          vErrors.push(err43);
        }
        errors++;
      }
    }
    if (data.refused !== undefined) {
      let data33 = data.refused;
      if (Array.isArray(data33)) {
        const len9 = data33.length;
        for (let i9 = 0; i9 < len9; i9++) {
          if (
            !validate330(data33[i9], {
              instancePath: instancePath + '/refused/' + i9,
              parentData: data33,
              parentDataProperty: i9,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate330.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err44 = {
          instancePath: instancePath + '/refused',
          schemaPath: '#/properties/refused/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err44];
        } else {
          vErrors.push(err44);
        }
        errors++;
      }
    }
    if (data.questioned !== undefined) {
      let data35 = data.questioned;
      if (Array.isArray(data35)) {
        const len10 = data35.length;
        for (let i10 = 0; i10 < len10; i10++) {
          if (
            !validate330(data35[i10], {
              instancePath: instancePath + '/questioned/' + i10,
              parentData: data35,
              parentDataProperty: i10,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate330.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err45 = {
          instancePath: instancePath + '/questioned',
          schemaPath: '#/properties/questioned/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err45];
        } else {
          vErrors.push(err45);
        }
        errors++;
      }
    }
    if (data.unused !== undefined) {
      if (
        !validate256(data.unused, {
          instancePath: instancePath + '/unused',
          parentData: data,
          parentDataProperty: 'unused',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate256.errors);
        errors = vErrors.length;
      }
    }
    if (data.caution !== undefined) {
      if (
        !validate239(data.caution, {
          instancePath: instancePath + '/caution',
          parentData: data,
          parentDataProperty: 'caution',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate239.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err46 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err46];
    } else {
      vErrors.push(err46);
    }
    errors++;
  }
  validate236.errors = vErrors;
  return errors === 0;
}
validate236.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const protocol = validate337;
const schema92 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'protocol.schema.json',
  type: 'object',
  properties: {
    protocol: { $ref: '#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: '#/$defs/text' },
    about: { $ref: '#/$defs/text' },
    ladder: { $ref: '#/$defs/name' },
    applies_when: { $ref: '#/$defs/condition' },
    otherwise: { $ref: '#/$defs/text' },
    review_by: { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
    owners: { type: 'array', items: { $ref: '#/$defs/text' }, minItems: 1, maxItems: 20 },
    sources: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: 'dictionary.schema.json#/$defs/source' },
    },
    observations: { $ref: '#/$defs/observations' },
    standing: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/standing_fact' },
    },
    limits: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/limit' },
    },
    faults: { type: 'array', items: { $ref: '#/$defs/fault' }, maxItems: 200 },
    measures: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/measure' },
    },
    rules: { type: 'array', items: { $ref: '#/$defs/rule' }, maxItems: 10000 },
    exactly_one_of: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/conditions' },
    },
  },
  required: ['protocol', 'edition', 'title', 'ladder', 'observations', 'rules'],
  additionalProperties: false,
  $defs: {
    name: { $ref: 'dictionary.schema.json#/$defs/name' },
    text: { $ref: 'dictionary.schema.json#/$defs/text' },
    quantity: { $ref: 'dictionary.schema.json#/$defs/quantity' },
    duration: { $ref: 'dictionary.schema.json#/$defs/duration' },
    yes: { $ref: 'dictionary.schema.json#/$defs/yes' },
    names: { type: 'array', items: { $ref: '#/$defs/name' }, maxItems: 200 },
    texts: { type: 'array', items: { $ref: '#/$defs/text' }, minItems: 1, maxItems: 20 },
    observations: {
      type: 'object',
      properties: {
        needs: { $ref: '#/$defs/names' },
        helps: { $ref: '#/$defs/names' },
        declares: {
          type: 'object',
          propertyNames: { $ref: '#/$defs/name' },
          additionalProperties: { $ref: 'dictionary.schema.json#/$defs/observation' },
        },
      },
      additionalProperties: false,
    },
    standing_fact: {
      type: 'object',
      properties: {
        set_by: { $ref: '#/$defs/text' },
        if_not_stated: { type: ['number', 'string', 'boolean'] },
      },
      additionalProperties: false,
    },
    limit: {
      type: 'object',
      properties: {
        value: { $ref: '#/$defs/quantity' },
        unit: { type: 'string', maxLength: 20 },
        between: { type: 'array', items: { $ref: '#/$defs/quantity' }, minItems: 2, maxItems: 2 },
        set_by: { $ref: '#/$defs/text' },
        title: { $ref: '#/$defs/text' },
        source: { $ref: '#/$defs/names' },
      },
      required: ['value'],
      additionalProperties: false,
    },
    condition: {
      type: 'object',
      properties: {
        all: { $ref: '#/$defs/conditions' },
        any: { $ref: '#/$defs/conditions' },
        none: { $ref: '#/$defs/conditions' },
        at_least_of: { $ref: '#/$defs/at_least_of' },
        rule: { $ref: '#/$defs/name' },
      },
      additionalProperties: { $ref: '#/$defs/comparison' },
      minProperties: 1,
      maxProperties: 100,
    },
    conditions: { type: 'array', items: { $ref: '#/$defs/condition' }, minItems: 1, maxItems: 200 },
    at_least_of: {
      type: 'object',
      properties: {
        count: { type: 'integer', minimum: 1, maximum: 200 },
        of: { $ref: '#/$defs/conditions' },
      },
      required: ['count', 'of'],
      additionalProperties: false,
    },
    comparison: {
      type: 'object',
      properties: {
        below: { $ref: '#/$defs/quantity' },
        above: { $ref: '#/$defs/quantity' },
        at_most: { $ref: '#/$defs/quantity' },
        at_least: { $ref: '#/$defs/quantity' },
        between: { type: 'array', items: { $ref: '#/$defs/quantity' }, minItems: 2, maxItems: 2 },
        is: { type: ['string', 'boolean'], maxLength: 60 },
        one_of: { $ref: '#/$defs/names' },
        known: { $ref: '#/$defs/yes' },
        unobtainable: { $ref: '#/$defs/yes' },
        accepted: { $ref: '#/$defs/text' },
      },
      minProperties: 1,
      additionalProperties: false,
    },
    measure: {
      type: 'object',
      properties: {
        title: { $ref: '#/$defs/text' },
        meaning: { $ref: '#/$defs/text' },
        unit: { type: 'string', maxLength: 20 },
        source: { $ref: '#/$defs/names' },
        formula: { type: ['string', 'number'], maxLength: 500 },
        curve: { $ref: '#/$defs/curve' },
        score: {
          type: 'object',
          propertyNames: { $ref: '#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/score_part' },
          minProperties: 1,
          maxProperties: 100,
        },
        choose: { type: 'array', items: { $ref: '#/$defs/choose_part' }, minItems: 2, maxItems: 100 },
        first_known: { $ref: '#/$defs/names' },
        highest: { $ref: '#/$defs/name' },
        lowest: { $ref: '#/$defs/name' },
        average: { $ref: '#/$defs/name' },
        earliest: { $ref: '#/$defs/name' },
        latest: { $ref: '#/$defs/name' },
        change: { $ref: '#/$defs/name' },
        count: { $ref: '#/$defs/name' },
        minutes_since: { $ref: '#/$defs/name' },
        held: { $ref: '#/$defs/condition' },
        over: { $ref: '#/$defs/duration' },
        where: { $ref: '#/$defs/condition' },
        present_set: { type: 'string', enum: ['included', 'left_out'] },
        longest_gap: { $ref: '#/$defs/duration' },
        not_reliable_when: { $ref: '#/$defs/condition' },
      },
      additionalProperties: false,
    },
    curve: {
      type: 'object',
      properties: {
        of: { $ref: '#/$defs/name' },
        points: {
          type: 'array',
          items: { type: 'array', items: { $ref: '#/$defs/quantity' }, minItems: 2, maxItems: 2 },
          minItems: 2,
          maxItems: 100,
        },
        beyond: { type: 'string', enum: ['missing', 'hold'] },
      },
      required: ['of', 'points'],
      additionalProperties: false,
    },
    score_part: {
      type: ['array', 'object'],
      items: { $ref: '#/$defs/band' },
      additionalProperties: { type: 'integer', minimum: -1000, maximum: 1000 },
      minItems: 1,
      maxItems: 100,
    },
    band: {
      type: 'object',
      properties: {
        at_most: { $ref: '#/$defs/quantity' },
        below: { $ref: '#/$defs/quantity' },
        points: { type: 'integer', minimum: -1000, maximum: 1000 },
      },
      required: ['points'],
      additionalProperties: false,
    },
    choose_part: {
      type: 'object',
      properties: { when: { $ref: '#/$defs/condition' }, use: { $ref: '#/$defs/quantity' } },
      required: ['use'],
      additionalProperties: false,
    },
    fault: {
      type: 'object',
      properties: {
        fault: { $ref: '#/$defs/name' },
        title: { $ref: '#/$defs/text' },
        when: { $ref: '#/$defs/condition' },
        reads_high: { $ref: '#/$defs/amounts' },
        reads_low: { $ref: '#/$defs/amounts' },
        says: { $ref: '#/$defs/text' },
        do: { type: 'array', items: { $ref: '#/$defs/action' }, minItems: 1, maxItems: 20 },
        source: { $ref: '#/$defs/names' },
      },
      required: ['fault', 'when', 'says', 'source'],
      additionalProperties: false,
    },
    amounts: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/quantity' },
      minProperties: 1,
      maxProperties: 20,
    },
    rule: {
      type: 'object',
      properties: {
        rule: { $ref: '#/$defs/name' },
        title: { $ref: '#/$defs/text' },
        when: { $ref: '#/$defs/condition' },
        unless: { $ref: '#/$defs/exception' },
        explained_by: { $ref: '#/$defs/explanation' },
        not_reliable_when: { $ref: '#/$defs/condition' },
        level: { $ref: '#/$defs/name' },
        says: { $ref: '#/$defs/text' },
        because: { $ref: '#/$defs/text' },
        ask: { $ref: '#/$defs/texts' },
        do: { type: 'array', items: { $ref: '#/$defs/action' }, minItems: 1, maxItems: 20 },
        source: { $ref: '#/$defs/names' },
        accepted: { $ref: '#/$defs/text' },
      },
      required: ['rule', 'when'],
      additionalProperties: false,
    },
    exception: {
      type: 'object',
      properties: {
        when: { $ref: '#/$defs/condition' },
        says: { $ref: '#/$defs/text' },
        accepted: { $ref: '#/$defs/text' },
      },
      required: ['when'],
      additionalProperties: false,
    },
    explanation: {
      type: 'object',
      properties: {
        when: { $ref: '#/$defs/condition' },
        says: { $ref: '#/$defs/text' },
        level: { $ref: '#/$defs/name' },
      },
      required: ['when', 'says'],
      additionalProperties: false,
    },
    action: {
      type: 'object',
      properties: {
        id: { $ref: '#/$defs/name' },
        text: { $ref: '#/$defs/text' },
        under: { $ref: '#/$defs/text' },
      },
      required: ['id', 'text'],
      additionalProperties: false,
    },
  },
};

function validate338(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate338.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate338.errors = vErrors;
  return errors === 0;
}
validate338.evaluated = { dynamicProps: false, dynamicItems: false };

function validate340(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate340.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate340.errors = vErrors;
  return errors === 0;
}
validate340.evaluated = { dynamicProps: false, dynamicItems: false };

const schema95 = {
  type: 'object',
  properties: {
    all: { $ref: '#/$defs/conditions' },
    any: { $ref: '#/$defs/conditions' },
    none: { $ref: '#/$defs/conditions' },
    at_least_of: { $ref: '#/$defs/at_least_of' },
    rule: { $ref: '#/$defs/name' },
  },
  additionalProperties: { $ref: '#/$defs/comparison' },
  minProperties: 1,
  maxProperties: 100,
};
const schema96 = {
  type: 'object',
  properties: {
    below: { $ref: '#/$defs/quantity' },
    above: { $ref: '#/$defs/quantity' },
    at_most: { $ref: '#/$defs/quantity' },
    at_least: { $ref: '#/$defs/quantity' },
    between: { type: 'array', items: { $ref: '#/$defs/quantity' }, minItems: 2, maxItems: 2 },
    is: { type: ['string', 'boolean'], maxLength: 60 },
    one_of: { $ref: '#/$defs/names' },
    known: { $ref: '#/$defs/yes' },
    unobtainable: { $ref: '#/$defs/yes' },
    accepted: { $ref: '#/$defs/text' },
  },
  minProperties: 1,
  additionalProperties: false,
};

function validate346(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate346.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!(typeof data == 'number' && isFinite(data)) && typeof data !== 'string') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema26.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err1 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  }
  validate346.errors = vErrors;
  return errors === 0;
}
validate346.evaluated = { dynamicProps: false, dynamicItems: false };

const schema98 = { type: 'array', items: { $ref: '#/$defs/name' }, maxItems: 200 };

function validate352(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate352.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length > 200) {
      const err0 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 200 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate338(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate352.errors = vErrors;
  return errors === 0;
}
validate352.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate355(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate355.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data !== 'string' && typeof data !== 'boolean') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema24.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (!(data === 'yes' || data === 'no' || data === true || data === false)) {
    const err1 = {
      instancePath,
      schemaPath: '#/enum',
      keyword: 'enum',
      params: { allowedValues: schema24.enum },
    };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate355.errors = vErrors;
  return errors === 0;
}
validate355.evaluated = { dynamicProps: false, dynamicItems: false };

function validate345(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate345.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (Object.keys(data).length < 1) {
      const err0 = {
        instancePath,
        schemaPath: '#/minProperties',
        keyword: 'minProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema96.properties, key0)) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.below !== undefined) {
      if (
        !validate346(data.below, {
          instancePath: instancePath + '/below',
          parentData: data,
          parentDataProperty: 'below',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.above !== undefined) {
      if (
        !validate346(data.above, {
          instancePath: instancePath + '/above',
          parentData: data,
          parentDataProperty: 'above',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_most !== undefined) {
      if (
        !validate346(data.at_most, {
          instancePath: instancePath + '/at_most',
          parentData: data,
          parentDataProperty: 'at_most',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_least !== undefined) {
      if (
        !validate346(data.at_least, {
          instancePath: instancePath + '/at_least',
          parentData: data,
          parentDataProperty: 'at_least',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.between !== undefined) {
      let data4 = data.between;
      if (Array.isArray(data4)) {
        if (data4.length > 2) {
          const err2 = {
            instancePath: instancePath + '/between',
            schemaPath: '#/properties/between/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err2];
          } else {
            vErrors.push(err2);
          }
          errors++;
        }
        if (data4.length < 2) {
          const err3 = {
            instancePath: instancePath + '/between',
            schemaPath: '#/properties/between/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate346(data4[i0], {
              instancePath: instancePath + '/between/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate346.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/between',
          schemaPath: '#/properties/between/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.is !== undefined) {
      let data6 = data.is;
      if (typeof data6 !== 'string' && typeof data6 !== 'boolean') {
        const err5 = {
          instancePath: instancePath + '/is',
          schemaPath: '#/properties/is/type',
          keyword: 'type',
          params: { type: schema96.properties.is.type },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
      if (typeof data6 === 'string') {
        if (func1(data6) > 60) {
          const err6 = {
            instancePath: instancePath + '/is',
            schemaPath: '#/properties/is/maxLength',
            keyword: 'maxLength',
            params: { limit: 60 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      }
    }
    if (data.one_of !== undefined) {
      if (
        !validate352(data.one_of, {
          instancePath: instancePath + '/one_of',
          parentData: data,
          parentDataProperty: 'one_of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
    if (data.known !== undefined) {
      if (
        !validate355(data.known, {
          instancePath: instancePath + '/known',
          parentData: data,
          parentDataProperty: 'known',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate355.errors);
        errors = vErrors.length;
      }
    }
    if (data.unobtainable !== undefined) {
      if (
        !validate355(data.unobtainable, {
          instancePath: instancePath + '/unobtainable',
          parentData: data,
          parentDataProperty: 'unobtainable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate355.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate340(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate345.errors = vErrors;
  return errors === 0;
}
validate345.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema100 = { type: 'array', items: { $ref: '#/$defs/condition' }, minItems: 1, maxItems: 200 };
const wrapper1 = { validate: validate344 };

function validate360(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate360.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length > 200) {
      const err0 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 200 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.length < 1) {
      const err1 = { instancePath, schemaPath: '#/minItems', keyword: 'minItems', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !wrapper1.validate(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, wrapper1.validate.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate360.errors = vErrors;
  return errors === 0;
}
validate360.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema101 = {
  type: 'object',
  properties: { count: { type: 'integer', minimum: 1, maximum: 200 }, of: { $ref: '#/$defs/conditions' } },
  required: ['count', 'of'],
  additionalProperties: false,
};

function validate364(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate364.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.count === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'count' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.of === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'of' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'count' || key0 === 'of')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.count !== undefined) {
      let data0 = data.count;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
        const err3 = {
          instancePath: instancePath + '/count',
          schemaPath: '#/properties/count/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (typeof data0 == 'number' && isFinite(data0)) {
        if (data0 > 200 || isNaN(data0)) {
          const err4 = {
            instancePath: instancePath + '/count',
            schemaPath: '#/properties/count/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data0 < 1 || isNaN(data0)) {
          const err5 = {
            instancePath: instancePath + '/count',
            schemaPath: '#/properties/count/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      }
    }
    if (data.of !== undefined) {
      if (
        !validate360(data.of, {
          instancePath: instancePath + '/of',
          parentData: data,
          parentDataProperty: 'of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate360.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate364.errors = vErrors;
  return errors === 0;
}
validate364.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate344(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate344.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (Object.keys(data).length > 100) {
      const err0 = {
        instancePath,
        schemaPath: '#/maxProperties',
        keyword: 'maxProperties',
        params: { limit: 100 },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (Object.keys(data).length < 1) {
      const err1 = {
        instancePath,
        schemaPath: '#/minProperties',
        keyword: 'minProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'all' ||
        key0 === 'any' ||
        key0 === 'none' ||
        key0 === 'at_least_of' ||
        key0 === 'rule'
      )) {
        if (
          !validate345(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate345.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.all !== undefined) {
      if (
        !validate360(data.all, {
          instancePath: instancePath + '/all',
          parentData: data,
          parentDataProperty: 'all',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate360.errors);
        errors = vErrors.length;
      }
    }
    if (data.any !== undefined) {
      if (
        !validate360(data.any, {
          instancePath: instancePath + '/any',
          parentData: data,
          parentDataProperty: 'any',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate360.errors);
        errors = vErrors.length;
      }
    }
    if (data.none !== undefined) {
      if (
        !validate360(data.none, {
          instancePath: instancePath + '/none',
          parentData: data,
          parentDataProperty: 'none',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate360.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_least_of !== undefined) {
      if (
        !validate364(data.at_least_of, {
          instancePath: instancePath + '/at_least_of',
          parentData: data,
          parentDataProperty: 'at_least_of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate364.errors);
        errors = vErrors.length;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate338(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate344.errors = vErrors;
  return errors === 0;
}
validate344.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate372(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate372.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.cite === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'cite' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'cite' || key0 === 'link' || key0 === 'from_memory')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.cite !== undefined) {
      if (
        !validate58(data.cite, {
          instancePath: instancePath + '/cite',
          parentData: data,
          parentDataProperty: 'cite',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.link !== undefined) {
      let data1 = data.link;
      if (typeof data1 === 'string') {
        if (func1(data1) > 300) {
          const err2 = {
            instancePath: instancePath + '/link',
            schemaPath: '#/properties/link/maxLength',
            keyword: 'maxLength',
            params: { limit: 300 },
          };
          if (vErrors === null) {
            vErrors = [err2];
          } else {
            vErrors.push(err2);
          }
          errors++;
        }
        if (!pattern4.test(data1)) {
          const err3 = {
            instancePath: instancePath + '/link',
            schemaPath: '#/properties/link/pattern',
            keyword: 'pattern',
            params: { pattern: '^https://[^ ]+$' },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/link',
          schemaPath: '#/properties/link/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.from_memory !== undefined) {
      if (
        !validate60(data.from_memory, {
          instancePath: instancePath + '/from_memory',
          parentData: data,
          parentDataProperty: 'from_memory',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate60.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate372.errors = vErrors;
  return errors === 0;
}
validate372.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema103 = {
  type: 'object',
  properties: {
    needs: { $ref: '#/$defs/names' },
    helps: { $ref: '#/$defs/names' },
    declares: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: 'dictionary.schema.json#/$defs/observation' },
    },
  },
  additionalProperties: false,
};

function validate380(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate380.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.title === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.kind === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema25.properties, key0)) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate58(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.short !== undefined) {
      if (
        !validate58(data.short, {
          instancePath: instancePath + '/short',
          parentData: data,
          parentDataProperty: 'short',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== undefined) {
      let data2 = data.kind;
      if (typeof data2 !== 'string') {
        const err3 = {
          instancePath: instancePath + '/kind',
          schemaPath: '#/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (!(data2 === 'number' || data2 === 'choice' || data2 === 'several' || data2 === 'yes_no')) {
        const err4 = {
          instancePath: instancePath + '/kind',
          schemaPath: '#/properties/kind/enum',
          keyword: 'enum',
          params: { allowedValues: schema25.properties.kind.enum },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.meaning !== undefined) {
      if (
        !validate58(data.meaning, {
          instancePath: instancePath + '/meaning',
          parentData: data,
          parentDataProperty: 'meaning',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      let data4 = data.unit;
      if (typeof data4 === 'string') {
        if (func1(data4) > 20) {
          const err5 = {
            instancePath: instancePath + '/unit',
            schemaPath: '#/properties/unit/maxLength',
            keyword: 'maxLength',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.step !== undefined) {
      if (
        !validate68(data.step, {
          instancePath: instancePath + '/step',
          parentData: data,
          parentDataProperty: 'step',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate68.errors);
        errors = vErrors.length;
      }
    }
    if (data.possible !== undefined) {
      if (
        !validate70(data.possible, {
          instancePath: instancePath + '/possible',
          parentData: data,
          parentDataProperty: 'possible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.plausible !== undefined) {
      if (
        !validate70(data.plausible, {
          instancePath: instancePath + '/plausible',
          parentData: data,
          parentDataProperty: 'plausible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate70.errors);
        errors = vErrors.length;
      }
    }
    if (data.ordinary !== undefined) {
      let data8 = data.ordinary;
      if (
        !(typeof data8 == 'number' && isFinite(data8)) &&
        typeof data8 !== 'string' &&
        typeof data8 !== 'boolean' &&
        !Array.isArray(data8)
      ) {
        const err7 = {
          instancePath: instancePath + '/ordinary',
          schemaPath: '#/properties/ordinary/type',
          keyword: 'type',
          params: { type: schema25.properties.ordinary.type },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
      if (Array.isArray(data8)) {
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate54(data8[i0], {
              instancePath: instancePath + '/ordinary/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate54.errors);
            errors = vErrors.length;
          }
        }
      }
    }
    if (data.choices !== undefined) {
      let data10 = data.choices;
      if (Array.isArray(data10)) {
        if (data10.length > 40) {
          const err8 = {
            instancePath: instancePath + '/choices',
            schemaPath: '#/properties/choices/maxItems',
            keyword: 'maxItems',
            params: { limit: 40 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data10.length < 2) {
          const err9 = {
            instancePath: instancePath + '/choices',
            schemaPath: '#/properties/choices/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        const len1 = data10.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate77(data10[i1], {
              instancePath: instancePath + '/choices/' + i1,
              parentData: data10,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate77.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = {
          instancePath: instancePath + '/choices',
          schemaPath: '#/properties/choices/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.loinc !== undefined) {
      let data12 = data.loinc;
      if (typeof data12 === 'string') {
        if (!pattern5.test(data12)) {
          const err11 = {
            instancePath: instancePath + '/loinc',
            schemaPath: '#/properties/loinc/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]{1,6}-[0-9]$' },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/loinc',
          schemaPath: '#/properties/loinc/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.good_for !== undefined) {
      if (
        !validate82(data.good_for, {
          instancePath: instancePath + '/good_for',
          parentData: data,
          parentDataProperty: 'good_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate82.errors);
        errors = vErrors.length;
      }
    }
    if (data.taken_with !== undefined) {
      if (
        !validate54(data.taken_with, {
          instancePath: instancePath + '/taken_with',
          parentData: data,
          parentDataProperty: 'taken_with',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate54.errors);
        errors = vErrors.length;
      }
    }
    if (data.standing !== undefined) {
      if (
        !validate60(data.standing, {
          instancePath: instancePath + '/standing',
          parentData: data,
          parentDataProperty: 'standing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate60.errors);
        errors = vErrors.length;
      }
    }
    if (data.set_by !== undefined) {
      if (
        !validate58(data.set_by, {
          instancePath: instancePath + '/set_by',
          parentData: data,
          parentDataProperty: 'set_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate58.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_not_stated !== undefined) {
      let data17 = data.if_not_stated;
      if (
        !(typeof data17 == 'number' && isFinite(data17)) &&
        typeof data17 !== 'string' &&
        typeof data17 !== 'boolean'
      ) {
        const err13 = {
          instancePath: instancePath + '/if_not_stated',
          schemaPath: '#/properties/if_not_stated/type',
          keyword: 'type',
          params: { type: schema25.properties.if_not_stated.type },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.also_called !== undefined) {
      let data18 = data.also_called;
      if (Array.isArray(data18)) {
        if (data18.length > 20) {
          const err14 = {
            instancePath: instancePath + '/also_called',
            schemaPath: '#/properties/also_called/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
        const len2 = data18.length;
        for (let i2 = 0; i2 < len2; i2++) {
          let data19 = data18[i2];
          if (typeof data19 === 'string') {
            if (func1(data19) > 60) {
              const err15 = {
                instancePath: instancePath + '/also_called/' + i2,
                schemaPath: '#/properties/also_called/items/maxLength',
                keyword: 'maxLength',
                params: { limit: 60 },
              };
              if (vErrors === null) {
                vErrors = [err15];
              } else {
                vErrors.push(err15);
              }
              errors++;
            }
            if (func1(data19) < 1) {
              const err16 = {
                instancePath: instancePath + '/also_called/' + i2,
                schemaPath: '#/properties/also_called/items/minLength',
                keyword: 'minLength',
                params: { limit: 1 },
              };
              if (vErrors === null) {
                vErrors = [err16];
              } else {
                vErrors.push(err16);
              }
              errors++;
            }
          } else {
            const err17 = {
              instancePath: instancePath + '/also_called/' + i2,
              schemaPath: '#/properties/also_called/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/also_called',
          schemaPath: '#/properties/also_called/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.source !== undefined) {
      let data20 = data.source;
      if (Array.isArray(data20)) {
        if (data20.length > 10) {
          const err19 = {
            instancePath: instancePath + '/source',
            schemaPath: '#/properties/source/maxItems',
            keyword: 'maxItems',
            params: { limit: 10 },
          };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (data20.length < 1) {
          const err20 = {
            instancePath: instancePath + '/source',
            schemaPath: '#/properties/source/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err20];
          } else {
            vErrors.push(err20);
          }
          errors++;
        }
        const len3 = data20.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate54(data20[i3], {
              instancePath: instancePath + '/source/' + i3,
              parentData: data20,
              parentDataProperty: i3,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate54.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err21 = {
          instancePath: instancePath + '/source',
          schemaPath: '#/properties/source/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err21];
        } else {
          vErrors.push(err21);
        }
        errors++;
      }
    }
  } else {
    const err22 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err22];
    } else {
      vErrors.push(err22);
    }
    errors++;
  }
  validate380.errors = vErrors;
  return errors === 0;
}
validate380.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate376(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate376.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'needs' || key0 === 'helps' || key0 === 'declares')) {
        const err0 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    }
    if (data.needs !== undefined) {
      if (
        !validate352(data.needs, {
          instancePath: instancePath + '/needs',
          parentData: data,
          parentDataProperty: 'needs',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
    if (data.helps !== undefined) {
      if (
        !validate352(data.helps, {
          instancePath: instancePath + '/helps',
          parentData: data,
          parentDataProperty: 'helps',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
    if (data.declares !== undefined) {
      let data2 = data.declares;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key1 in data2) {
          const _errs6 = errors;
          if (
            !validate338(key1, {
              instancePath: instancePath + '/declares',
              parentData: data2,
              parentDataProperty: 'declares',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs6 === errors;
          if (!valid1) {
            const err1 = {
              instancePath: instancePath + '/declares',
              schemaPath: '#/properties/declares/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err1];
            } else {
              vErrors.push(err1);
            }
            errors++;
          }
        }
        for (const key2 in data2) {
          if (
            !validate380(data2[key2], {
              instancePath: instancePath + '/declares/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate380.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err2 = {
          instancePath: instancePath + '/declares',
          schemaPath: '#/properties/declares/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate376.errors = vErrors;
  return errors === 0;
}
validate376.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema105 = {
  type: 'object',
  properties: { set_by: { $ref: '#/$defs/text' }, if_not_stated: { type: ['number', 'string', 'boolean'] } },
  additionalProperties: false,
};

function validate397(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate397.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'set_by' || key0 === 'if_not_stated')) {
        const err0 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    }
    if (data.set_by !== undefined) {
      if (
        !validate340(data.set_by, {
          instancePath: instancePath + '/set_by',
          parentData: data,
          parentDataProperty: 'set_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_not_stated !== undefined) {
      let data1 = data.if_not_stated;
      if (
        !(typeof data1 == 'number' && isFinite(data1)) &&
        typeof data1 !== 'string' &&
        typeof data1 !== 'boolean'
      ) {
        const err1 = {
          instancePath: instancePath + '/if_not_stated',
          schemaPath: '#/properties/if_not_stated/type',
          keyword: 'type',
          params: { type: schema105.properties.if_not_stated.type },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate397.errors = vErrors;
  return errors === 0;
}
validate397.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema106 = {
  type: 'object',
  properties: {
    value: { $ref: '#/$defs/quantity' },
    unit: { type: 'string', maxLength: 20 },
    between: { type: 'array', items: { $ref: '#/$defs/quantity' }, minItems: 2, maxItems: 2 },
    set_by: { $ref: '#/$defs/text' },
    title: { $ref: '#/$defs/text' },
    source: { $ref: '#/$defs/names' },
  },
  required: ['value'],
  additionalProperties: false,
};

function validate401(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate401.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.value === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'value' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'value' ||
        key0 === 'unit' ||
        key0 === 'between' ||
        key0 === 'set_by' ||
        key0 === 'title' ||
        key0 === 'source'
      )) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.value !== undefined) {
      if (
        !validate346(data.value, {
          instancePath: instancePath + '/value',
          parentData: data,
          parentDataProperty: 'value',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      let data1 = data.unit;
      if (typeof data1 === 'string') {
        if (func1(data1) > 20) {
          const err2 = {
            instancePath: instancePath + '/unit',
            schemaPath: '#/properties/unit/maxLength',
            keyword: 'maxLength',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err2];
          } else {
            vErrors.push(err2);
          }
          errors++;
        }
      } else {
        const err3 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.between !== undefined) {
      let data2 = data.between;
      if (Array.isArray(data2)) {
        if (data2.length > 2) {
          const err4 = {
            instancePath: instancePath + '/between',
            schemaPath: '#/properties/between/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data2.length < 2) {
          const err5 = {
            instancePath: instancePath + '/between',
            schemaPath: '#/properties/between/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        const len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate346(data2[i0], {
              instancePath: instancePath + '/between/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate346.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/between',
          schemaPath: '#/properties/between/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.set_by !== undefined) {
      if (
        !validate340(data.set_by, {
          instancePath: instancePath + '/set_by',
          parentData: data,
          parentDataProperty: 'set_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate340(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate352(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate401.errors = vErrors;
  return errors === 0;
}
validate401.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema107 = {
  type: 'object',
  properties: {
    fault: { $ref: '#/$defs/name' },
    title: { $ref: '#/$defs/text' },
    when: { $ref: '#/$defs/condition' },
    reads_high: { $ref: '#/$defs/amounts' },
    reads_low: { $ref: '#/$defs/amounts' },
    says: { $ref: '#/$defs/text' },
    do: { type: 'array', items: { $ref: '#/$defs/action' }, minItems: 1, maxItems: 20 },
    source: { $ref: '#/$defs/names' },
  },
  required: ['fault', 'when', 'says', 'source'],
  additionalProperties: false,
};
const schema108 = {
  type: 'object',
  propertyNames: { $ref: '#/$defs/name' },
  additionalProperties: { $ref: '#/$defs/quantity' },
  minProperties: 1,
  maxProperties: 20,
};

function validate412(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate412.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (Object.keys(data).length > 20) {
      const err0 = {
        instancePath,
        schemaPath: '#/maxProperties',
        keyword: 'maxProperties',
        params: { limit: 20 },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (Object.keys(data).length < 1) {
      const err1 = {
        instancePath,
        schemaPath: '#/minProperties',
        keyword: 'minProperties',
        params: { limit: 1 },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      const _errs1 = errors;
      if (
        !validate338(key0, { instancePath, parentData: data, parentDataProperty, rootData, dynamicAnchors })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
      var valid0 = _errs1 === errors;
      if (!valid0) {
        const err2 = {
          instancePath,
          schemaPath: '#/propertyNames',
          keyword: 'propertyNames',
          params: { propertyName: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    for (const key1 in data) {
      if (
        !validate346(data[key1], {
          instancePath: instancePath + '/' + key1.replace(/~/g, '~0').replace(/\//g, '~1'),
          parentData: data,
          parentDataProperty: key1,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate412.errors = vErrors;
  return errors === 0;
}
validate412.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema109 = {
  type: 'object',
  properties: {
    id: { $ref: '#/$defs/name' },
    text: { $ref: '#/$defs/text' },
    under: { $ref: '#/$defs/text' },
  },
  required: ['id', 'text'],
  additionalProperties: false,
};

function validate418(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate418.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.id === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'id' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.text === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'text' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'id' || key0 === 'text' || key0 === 'under')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.id !== undefined) {
      if (
        !validate338(data.id, {
          instancePath: instancePath + '/id',
          parentData: data,
          parentDataProperty: 'id',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.text !== undefined) {
      if (
        !validate340(data.text, {
          instancePath: instancePath + '/text',
          parentData: data,
          parentDataProperty: 'text',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.under !== undefined) {
      if (
        !validate340(data.under, {
          instancePath: instancePath + '/under',
          parentData: data,
          parentDataProperty: 'under',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate418.errors = vErrors;
  return errors === 0;
}
validate418.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate408(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate408.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.fault === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'fault' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.when === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'when' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.says === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'says' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.source === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'source' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'fault' ||
        key0 === 'title' ||
        key0 === 'when' ||
        key0 === 'reads_high' ||
        key0 === 'reads_low' ||
        key0 === 'says' ||
        key0 === 'do' ||
        key0 === 'source'
      )) {
        const err4 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
    }
    if (data.fault !== undefined) {
      if (
        !validate338(data.fault, {
          instancePath: instancePath + '/fault',
          parentData: data,
          parentDataProperty: 'fault',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate340(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate344(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_high !== undefined) {
      if (
        !validate412(data.reads_high, {
          instancePath: instancePath + '/reads_high',
          parentData: data,
          parentDataProperty: 'reads_high',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate412.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_low !== undefined) {
      if (
        !validate412(data.reads_low, {
          instancePath: instancePath + '/reads_low',
          parentData: data,
          parentDataProperty: 'reads_low',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate412.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate340(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      let data6 = data.do;
      if (Array.isArray(data6)) {
        if (data6.length > 20) {
          const err5 = {
            instancePath: instancePath + '/do',
            schemaPath: '#/properties/do/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        if (data6.length < 1) {
          const err6 = {
            instancePath: instancePath + '/do',
            schemaPath: '#/properties/do/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        const len0 = data6.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate418(data6[i0], {
              instancePath: instancePath + '/do/' + i0,
              parentData: data6,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate418.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/do',
          schemaPath: '#/properties/do/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate352(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err8 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err8];
    } else {
      vErrors.push(err8);
    }
    errors++;
  }
  validate408.errors = vErrors;
  return errors === 0;
}
validate408.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema110 = {
  type: 'object',
  properties: {
    title: { $ref: '#/$defs/text' },
    meaning: { $ref: '#/$defs/text' },
    unit: { type: 'string', maxLength: 20 },
    source: { $ref: '#/$defs/names' },
    formula: { type: ['string', 'number'], maxLength: 500 },
    curve: { $ref: '#/$defs/curve' },
    score: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/score_part' },
      minProperties: 1,
      maxProperties: 100,
    },
    choose: { type: 'array', items: { $ref: '#/$defs/choose_part' }, minItems: 2, maxItems: 100 },
    first_known: { $ref: '#/$defs/names' },
    highest: { $ref: '#/$defs/name' },
    lowest: { $ref: '#/$defs/name' },
    average: { $ref: '#/$defs/name' },
    earliest: { $ref: '#/$defs/name' },
    latest: { $ref: '#/$defs/name' },
    change: { $ref: '#/$defs/name' },
    count: { $ref: '#/$defs/name' },
    minutes_since: { $ref: '#/$defs/name' },
    held: { $ref: '#/$defs/condition' },
    over: { $ref: '#/$defs/duration' },
    where: { $ref: '#/$defs/condition' },
    present_set: { type: 'string', enum: ['included', 'left_out'] },
    longest_gap: { $ref: '#/$defs/duration' },
    not_reliable_when: { $ref: '#/$defs/condition' },
  },
  additionalProperties: false,
};
const schema111 = {
  type: 'object',
  properties: {
    of: { $ref: '#/$defs/name' },
    points: {
      type: 'array',
      items: { type: 'array', items: { $ref: '#/$defs/quantity' }, minItems: 2, maxItems: 2 },
      minItems: 2,
      maxItems: 100,
    },
    beyond: { type: 'string', enum: ['missing', 'hold'] },
  },
  required: ['of', 'points'],
  additionalProperties: false,
};

function validate430(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate430.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.of === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'of' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.points === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'points' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'of' || key0 === 'points' || key0 === 'beyond')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.of !== undefined) {
      if (
        !validate338(data.of, {
          instancePath: instancePath + '/of',
          parentData: data,
          parentDataProperty: 'of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.points !== undefined) {
      let data1 = data.points;
      if (Array.isArray(data1)) {
        if (data1.length > 100) {
          const err3 = {
            instancePath: instancePath + '/points',
            schemaPath: '#/properties/points/maxItems',
            keyword: 'maxItems',
            params: { limit: 100 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (data1.length < 2) {
          const err4 = {
            instancePath: instancePath + '/points',
            schemaPath: '#/properties/points/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          let data2 = data1[i0];
          if (Array.isArray(data2)) {
            if (data2.length > 2) {
              const err5 = {
                instancePath: instancePath + '/points/' + i0,
                schemaPath: '#/properties/points/items/maxItems',
                keyword: 'maxItems',
                params: { limit: 2 },
              };
              if (vErrors === null) {
                vErrors = [err5];
              } else {
                vErrors.push(err5);
              }
              errors++;
            }
            if (data2.length < 2) {
              const err6 = {
                instancePath: instancePath + '/points/' + i0,
                schemaPath: '#/properties/points/items/minItems',
                keyword: 'minItems',
                params: { limit: 2 },
              };
              if (vErrors === null) {
                vErrors = [err6];
              } else {
                vErrors.push(err6);
              }
              errors++;
            }
            const len1 = data2.length;
            for (let i1 = 0; i1 < len1; i1++) {
              if (
                !validate346(data2[i1], {
                  instancePath: instancePath + '/points/' + i0 + '/' + i1,
                  parentData: data2,
                  parentDataProperty: i1,
                  rootData,
                  dynamicAnchors,
                })
              ) {
                vErrors = joined(vErrors, validate346.errors);
                errors = vErrors.length;
              }
            }
          } else {
            const err7 = {
              instancePath: instancePath + '/points/' + i0,
              schemaPath: '#/properties/points/items/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            if (vErrors === null) {
              vErrors = [err7];
            } else {
              vErrors.push(err7);
            }
            errors++;
          }
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/points',
          schemaPath: '#/properties/points/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.beyond !== undefined) {
      let data4 = data.beyond;
      if (typeof data4 !== 'string') {
        const err9 = {
          instancePath: instancePath + '/beyond',
          schemaPath: '#/properties/beyond/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
      if (!(data4 === 'missing' || data4 === 'hold')) {
        const err10 = {
          instancePath: instancePath + '/beyond',
          schemaPath: '#/properties/beyond/enum',
          keyword: 'enum',
          params: { allowedValues: schema111.properties.beyond.enum },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
  } else {
    const err11 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
  }
  validate430.errors = vErrors;
  return errors === 0;
}
validate430.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema112 = {
  type: ['array', 'object'],
  items: { $ref: '#/$defs/band' },
  additionalProperties: { type: 'integer', minimum: -1000, maximum: 1000 },
  minItems: 1,
  maxItems: 100,
};
const schema113 = {
  type: 'object',
  properties: {
    at_most: { $ref: '#/$defs/quantity' },
    below: { $ref: '#/$defs/quantity' },
    points: { type: 'integer', minimum: -1000, maximum: 1000 },
  },
  required: ['points'],
  additionalProperties: false,
};

function validate436(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate436.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.points === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'points' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'at_most' || key0 === 'below' || key0 === 'points')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.at_most !== undefined) {
      if (
        !validate346(data.at_most, {
          instancePath: instancePath + '/at_most',
          parentData: data,
          parentDataProperty: 'at_most',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.below !== undefined) {
      if (
        !validate346(data.below, {
          instancePath: instancePath + '/below',
          parentData: data,
          parentDataProperty: 'below',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
    if (data.points !== undefined) {
      let data2 = data.points;
      if (!(typeof data2 == 'number' && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        const err2 = {
          instancePath: instancePath + '/points',
          schemaPath: '#/properties/points/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      if (typeof data2 == 'number' && isFinite(data2)) {
        if (data2 > 1000 || isNaN(data2)) {
          const err3 = {
            instancePath: instancePath + '/points',
            schemaPath: '#/properties/points/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 1000 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (data2 < -1000 || isNaN(data2)) {
          const err4 = {
            instancePath: instancePath + '/points',
            schemaPath: '#/properties/points/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: -1000 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate436.errors = vErrors;
  return errors === 0;
}
validate436.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate435(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate435.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!data || typeof data != 'object') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema112.type } };
    if (vErrors === null) {
      vErrors = [err0];
    } else {
      vErrors.push(err0);
    }
    errors++;
  }
  if (Array.isArray(data)) {
    if (data.length > 100) {
      const err1 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 100 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.length < 1) {
      const err2 = { instancePath, schemaPath: '#/minItems', keyword: 'minItems', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate436(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate436.errors);
        errors = vErrors.length;
      }
    }
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      let data1 = data[key0];
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
          schemaPath: '#/additionalProperties/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 1000 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            schemaPath: '#/additionalProperties/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 1000 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data1 < -1000 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            schemaPath: '#/additionalProperties/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: -1000 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      }
    }
  }
  validate435.errors = vErrors;
  return errors === 0;
}
validate435.evaluated = { props: true, items: true, dynamicProps: false, dynamicItems: false };

const schema114 = {
  type: 'object',
  properties: { when: { $ref: '#/$defs/condition' }, use: { $ref: '#/$defs/quantity' } },
  required: ['use'],
  additionalProperties: false,
};

function validate441(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate441.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.use === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'use' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'when' || key0 === 'use')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate344(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.use !== undefined) {
      if (
        !validate346(data.use, {
          instancePath: instancePath + '/use',
          parentData: data,
          parentDataProperty: 'use',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate346.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate441.errors = vErrors;
  return errors === 0;
}
validate441.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate455(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate455.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 40) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 40 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern6.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[0-9]+([.][0-9]+)? (s|min|h|d|wk|mo|y)$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate455.errors = vErrors;
  return errors === 0;
}
validate455.evaluated = { dynamicProps: false, dynamicItems: false };

function validate426(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate426.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!func5.call(schema110.properties, key0)) {
        const err0 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate340(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.meaning !== undefined) {
      if (
        !validate340(data.meaning, {
          instancePath: instancePath + '/meaning',
          parentData: data,
          parentDataProperty: 'meaning',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      let data2 = data.unit;
      if (typeof data2 === 'string') {
        if (func1(data2) > 20) {
          const err1 = {
            instancePath: instancePath + '/unit',
            schemaPath: '#/properties/unit/maxLength',
            keyword: 'maxLength',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err1];
          } else {
            vErrors.push(err1);
          }
          errors++;
        }
      } else {
        const err2 = {
          instancePath: instancePath + '/unit',
          schemaPath: '#/properties/unit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate352(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
    if (data.formula !== undefined) {
      let data4 = data.formula;
      if (typeof data4 !== 'string' && !(typeof data4 == 'number' && isFinite(data4))) {
        const err3 = {
          instancePath: instancePath + '/formula',
          schemaPath: '#/properties/formula/type',
          keyword: 'type',
          params: { type: schema110.properties.formula.type },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (typeof data4 === 'string') {
        if (func1(data4) > 500) {
          const err4 = {
            instancePath: instancePath + '/formula',
            schemaPath: '#/properties/formula/maxLength',
            keyword: 'maxLength',
            params: { limit: 500 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
      }
    }
    if (data.curve !== undefined) {
      if (
        !validate430(data.curve, {
          instancePath: instancePath + '/curve',
          parentData: data,
          parentDataProperty: 'curve',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate430.errors);
        errors = vErrors.length;
      }
    }
    if (data.score !== undefined) {
      let data6 = data.score;
      if (data6 && typeof data6 == 'object' && !Array.isArray(data6)) {
        if (Object.keys(data6).length > 100) {
          const err5 = {
            instancePath: instancePath + '/score',
            schemaPath: '#/properties/score/maxProperties',
            keyword: 'maxProperties',
            params: { limit: 100 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        if (Object.keys(data6).length < 1) {
          const err6 = {
            instancePath: instancePath + '/score',
            schemaPath: '#/properties/score/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        for (const key1 in data6) {
          const _errs12 = errors;
          if (
            !validate338(key1, {
              instancePath: instancePath + '/score',
              parentData: data6,
              parentDataProperty: 'score',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs12 === errors;
          if (!valid1) {
            const err7 = {
              instancePath: instancePath + '/score',
              schemaPath: '#/properties/score/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err7];
            } else {
              vErrors.push(err7);
            }
            errors++;
          }
        }
        for (const key2 in data6) {
          if (
            !validate435(data6[key2], {
              instancePath: instancePath + '/score/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data6,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate435.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/score',
          schemaPath: '#/properties/score/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err8];
        } else {
          vErrors.push(err8);
        }
        errors++;
      }
    }
    if (data.choose !== undefined) {
      let data8 = data.choose;
      if (Array.isArray(data8)) {
        if (data8.length > 100) {
          const err9 = {
            instancePath: instancePath + '/choose',
            schemaPath: '#/properties/choose/maxItems',
            keyword: 'maxItems',
            params: { limit: 100 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (data8.length < 2) {
          const err10 = {
            instancePath: instancePath + '/choose',
            schemaPath: '#/properties/choose/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate441(data8[i0], {
              instancePath: instancePath + '/choose/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate441.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = {
          instancePath: instancePath + '/choose',
          schemaPath: '#/properties/choose/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.first_known !== undefined) {
      if (
        !validate352(data.first_known, {
          instancePath: instancePath + '/first_known',
          parentData: data,
          parentDataProperty: 'first_known',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
    if (data.highest !== undefined) {
      if (
        !validate338(data.highest, {
          instancePath: instancePath + '/highest',
          parentData: data,
          parentDataProperty: 'highest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.lowest !== undefined) {
      if (
        !validate338(data.lowest, {
          instancePath: instancePath + '/lowest',
          parentData: data,
          parentDataProperty: 'lowest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.average !== undefined) {
      if (
        !validate338(data.average, {
          instancePath: instancePath + '/average',
          parentData: data,
          parentDataProperty: 'average',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.earliest !== undefined) {
      if (
        !validate338(data.earliest, {
          instancePath: instancePath + '/earliest',
          parentData: data,
          parentDataProperty: 'earliest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.latest !== undefined) {
      if (
        !validate338(data.latest, {
          instancePath: instancePath + '/latest',
          parentData: data,
          parentDataProperty: 'latest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.change !== undefined) {
      if (
        !validate338(data.change, {
          instancePath: instancePath + '/change',
          parentData: data,
          parentDataProperty: 'change',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.count !== undefined) {
      if (
        !validate338(data.count, {
          instancePath: instancePath + '/count',
          parentData: data,
          parentDataProperty: 'count',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.minutes_since !== undefined) {
      if (
        !validate338(data.minutes_since, {
          instancePath: instancePath + '/minutes_since',
          parentData: data,
          parentDataProperty: 'minutes_since',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.held !== undefined) {
      if (
        !validate344(data.held, {
          instancePath: instancePath + '/held',
          parentData: data,
          parentDataProperty: 'held',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.over !== undefined) {
      if (
        !validate455(data.over, {
          instancePath: instancePath + '/over',
          parentData: data,
          parentDataProperty: 'over',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate455.errors);
        errors = vErrors.length;
      }
    }
    if (data.where !== undefined) {
      if (
        !validate344(data.where, {
          instancePath: instancePath + '/where',
          parentData: data,
          parentDataProperty: 'where',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.present_set !== undefined) {
      let data22 = data.present_set;
      if (typeof data22 !== 'string') {
        const err12 = {
          instancePath: instancePath + '/present_set',
          schemaPath: '#/properties/present_set/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
      if (!(data22 === 'included' || data22 === 'left_out')) {
        const err13 = {
          instancePath: instancePath + '/present_set',
          schemaPath: '#/properties/present_set/enum',
          keyword: 'enum',
          params: { allowedValues: schema110.properties.present_set.enum },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.longest_gap !== undefined) {
      if (
        !validate455(data.longest_gap, {
          instancePath: instancePath + '/longest_gap',
          parentData: data,
          parentDataProperty: 'longest_gap',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate455.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable_when !== undefined) {
      if (
        !validate344(data.not_reliable_when, {
          instancePath: instancePath + '/not_reliable_when',
          parentData: data,
          parentDataProperty: 'not_reliable_when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err14 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err14];
    } else {
      vErrors.push(err14);
    }
    errors++;
  }
  validate426.errors = vErrors;
  return errors === 0;
}
validate426.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema116 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: '#/$defs/text' },
    when: { $ref: '#/$defs/condition' },
    unless: { $ref: '#/$defs/exception' },
    explained_by: { $ref: '#/$defs/explanation' },
    not_reliable_when: { $ref: '#/$defs/condition' },
    level: { $ref: '#/$defs/name' },
    says: { $ref: '#/$defs/text' },
    because: { $ref: '#/$defs/text' },
    ask: { $ref: '#/$defs/texts' },
    do: { type: 'array', items: { $ref: '#/$defs/action' }, minItems: 1, maxItems: 20 },
    source: { $ref: '#/$defs/names' },
    accepted: { $ref: '#/$defs/text' },
  },
  required: ['rule', 'when'],
  additionalProperties: false,
};
const schema117 = {
  type: 'object',
  properties: {
    when: { $ref: '#/$defs/condition' },
    says: { $ref: '#/$defs/text' },
    accepted: { $ref: '#/$defs/text' },
  },
  required: ['when'],
  additionalProperties: false,
};

function validate465(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate465.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.when === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'when' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'when' || key0 === 'says' || key0 === 'accepted')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate344(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate340(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate340(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate465.errors = vErrors;
  return errors === 0;
}
validate465.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema118 = {
  type: 'object',
  properties: {
    when: { $ref: '#/$defs/condition' },
    says: { $ref: '#/$defs/text' },
    level: { $ref: '#/$defs/name' },
  },
  required: ['when', 'says'],
  additionalProperties: false,
};

function validate470(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate470.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.when === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'when' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.says === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'says' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'when' || key0 === 'says' || key0 === 'level')) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate344(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate340(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate338(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err3 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err3];
    } else {
      vErrors.push(err3);
    }
    errors++;
  }
  validate470.errors = vErrors;
  return errors === 0;
}
validate470.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema119 = { type: 'array', items: { $ref: '#/$defs/text' }, minItems: 1, maxItems: 20 };

function validate479(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate479.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length > 20) {
      const err0 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 20 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.length < 1) {
      const err1 = { instancePath, schemaPath: '#/minItems', keyword: 'minItems', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    const len0 = data.length;
    for (let i0 = 0; i0 < len0; i0++) {
      if (
        !validate340(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate479.errors = vErrors;
  return errors === 0;
}
validate479.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate461(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate461.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.rule === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.when === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'when' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema116.properties, key0)) {
        const err2 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate338(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate340(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate344(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.unless !== undefined) {
      if (
        !validate465(data.unless, {
          instancePath: instancePath + '/unless',
          parentData: data,
          parentDataProperty: 'unless',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate470(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate470.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable_when !== undefined) {
      if (
        !validate344(data.not_reliable_when, {
          instancePath: instancePath + '/not_reliable_when',
          parentData: data,
          parentDataProperty: 'not_reliable_when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate338(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate340(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate340(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask !== undefined) {
      if (
        !validate479(data.ask, {
          instancePath: instancePath + '/ask',
          parentData: data,
          parentDataProperty: 'ask',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate479.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      let data10 = data.do;
      if (Array.isArray(data10)) {
        if (data10.length > 20) {
          const err3 = {
            instancePath: instancePath + '/do',
            schemaPath: '#/properties/do/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (data10.length < 1) {
          const err4 = {
            instancePath: instancePath + '/do',
            schemaPath: '#/properties/do/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        const len0 = data10.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate418(data10[i0], {
              instancePath: instancePath + '/do/' + i0,
              parentData: data10,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate418.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/do',
          schemaPath: '#/properties/do/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate352(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate352.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate340(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate461.errors = vErrors;
  return errors === 0;
}
validate461.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const pattern22 = new RegExp('^[0-9]{4}-[0-9]{2}-[0-9]{2}$', 'u');

function validate337(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="protocol.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate337.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.protocol === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'protocol' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.edition === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.ladder === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ladder' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.observations === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observations' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.rules === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rules' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema92.properties, key0)) {
        const err6 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
    }
    if (data.protocol !== undefined) {
      if (
        !validate338(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err7 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err7];
        } else {
          vErrors.push(err7);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 100000 || isNaN(data1)) {
          const err8 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err9 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
      }
    }
    if (data.title !== undefined) {
      if (
        !validate340(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== undefined) {
      if (
        !validate340(data.about, {
          instancePath: instancePath + '/about',
          parentData: data,
          parentDataProperty: 'about',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.ladder !== undefined) {
      if (
        !validate338(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate338.errors);
        errors = vErrors.length;
      }
    }
    if (data.applies_when !== undefined) {
      if (
        !validate344(data.applies_when, {
          instancePath: instancePath + '/applies_when',
          parentData: data,
          parentDataProperty: 'applies_when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate344.errors);
        errors = vErrors.length;
      }
    }
    if (data.otherwise !== undefined) {
      if (
        !validate340(data.otherwise, {
          instancePath: instancePath + '/otherwise',
          parentData: data,
          parentDataProperty: 'otherwise',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate340.errors);
        errors = vErrors.length;
      }
    }
    if (data.review_by !== undefined) {
      let data7 = data.review_by;
      if (typeof data7 === 'string') {
        if (!pattern22.test(data7)) {
          const err10 = {
            instancePath: instancePath + '/review_by',
            schemaPath: '#/properties/review_by/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
          };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      } else {
        const err11 = {
          instancePath: instancePath + '/review_by',
          schemaPath: '#/properties/review_by/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.owners !== undefined) {
      let data8 = data.owners;
      if (Array.isArray(data8)) {
        if (data8.length > 20) {
          const err12 = {
            instancePath: instancePath + '/owners',
            schemaPath: '#/properties/owners/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
        if (data8.length < 1) {
          const err13 = {
            instancePath: instancePath + '/owners',
            schemaPath: '#/properties/owners/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate340(data8[i0], {
              instancePath: instancePath + '/owners/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate340.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err14 = {
          instancePath: instancePath + '/owners',
          schemaPath: '#/properties/owners/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.sources !== undefined) {
      let data10 = data.sources;
      if (data10 && typeof data10 == 'object' && !Array.isArray(data10)) {
        for (const key1 in data10) {
          const _errs17 = errors;
          if (
            !validate338(key1, {
              instancePath: instancePath + '/sources',
              parentData: data10,
              parentDataProperty: 'sources',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs17 === errors;
          if (!valid3) {
            const err15 = {
              instancePath: instancePath + '/sources',
              schemaPath: '#/properties/sources/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        }
        for (const key2 in data10) {
          if (
            !validate372(data10[key2], {
              instancePath: instancePath + '/sources/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data10,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate372.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err16 = {
          instancePath: instancePath + '/sources',
          schemaPath: '#/properties/sources/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.observations !== undefined) {
      if (
        !validate376(data.observations, {
          instancePath: instancePath + '/observations',
          parentData: data,
          parentDataProperty: 'observations',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate376.errors);
        errors = vErrors.length;
      }
    }
    if (data.standing !== undefined) {
      let data13 = data.standing;
      if (data13 && typeof data13 == 'object' && !Array.isArray(data13)) {
        for (const key3 in data13) {
          const _errs23 = errors;
          if (
            !validate338(key3, {
              instancePath: instancePath + '/standing',
              parentData: data13,
              parentDataProperty: 'standing',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid5 = _errs23 === errors;
          if (!valid5) {
            const err17 = {
              instancePath: instancePath + '/standing',
              schemaPath: '#/properties/standing/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
        }
        for (const key4 in data13) {
          if (
            !validate397(data13[key4], {
              instancePath: instancePath + '/standing/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data13,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate397.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/standing',
          schemaPath: '#/properties/standing/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.limits !== undefined) {
      let data15 = data.limits;
      if (data15 && typeof data15 == 'object' && !Array.isArray(data15)) {
        for (const key5 in data15) {
          const _errs28 = errors;
          if (
            !validate338(key5, {
              instancePath: instancePath + '/limits',
              parentData: data15,
              parentDataProperty: 'limits',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid7 = _errs28 === errors;
          if (!valid7) {
            const err19 = {
              instancePath: instancePath + '/limits',
              schemaPath: '#/properties/limits/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key5 },
            };
            if (vErrors === null) {
              vErrors = [err19];
            } else {
              vErrors.push(err19);
            }
            errors++;
          }
        }
        for (const key6 in data15) {
          if (
            !validate401(data15[key6], {
              instancePath: instancePath + '/limits/' + key6.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data15,
              parentDataProperty: key6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate401.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err20 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.faults !== undefined) {
      let data17 = data.faults;
      if (Array.isArray(data17)) {
        if (data17.length > 200) {
          const err21 = {
            instancePath: instancePath + '/faults',
            schemaPath: '#/properties/faults/maxItems',
            keyword: 'maxItems',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err21];
          } else {
            vErrors.push(err21);
          }
          errors++;
        }
        const len1 = data17.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate408(data17[i1], {
              instancePath: instancePath + '/faults/' + i1,
              parentData: data17,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate408.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err22 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err22];
        } else {
          vErrors.push(err22);
        }
        errors++;
      }
    }
    if (data.measures !== undefined) {
      let data19 = data.measures;
      if (data19 && typeof data19 == 'object' && !Array.isArray(data19)) {
        for (const key7 in data19) {
          const _errs36 = errors;
          if (
            !validate338(key7, {
              instancePath: instancePath + '/measures',
              parentData: data19,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid11 = _errs36 === errors;
          if (!valid11) {
            const err23 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key7 },
            };
            if (vErrors === null) {
              vErrors = [err23];
            } else {
              vErrors.push(err23);
            }
            errors++;
          }
        }
        for (const key8 in data19) {
          if (
            !validate426(data19[key8], {
              instancePath: instancePath + '/measures/' + key8.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data19,
              parentDataProperty: key8,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate426.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err24 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err24];
        } else {
          vErrors.push(err24);
        }
        errors++;
      }
    }
    if (data.rules !== undefined) {
      let data21 = data.rules;
      if (Array.isArray(data21)) {
        if (data21.length > 10000) {
          const err25 = {
            instancePath: instancePath + '/rules',
            schemaPath: '#/properties/rules/maxItems',
            keyword: 'maxItems',
            params: { limit: 10000 },
          };
          if (vErrors === null) {
            vErrors = [err25];
          } else {
            vErrors.push(err25);
          }
          errors++;
        }
        const len2 = data21.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate461(data21[i2], {
              instancePath: instancePath + '/rules/' + i2,
              parentData: data21,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate461.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err26 = {
          instancePath: instancePath + '/rules',
          schemaPath: '#/properties/rules/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err26];
        } else {
          vErrors.push(err26);
        }
        errors++;
      }
    }
    if (data.exactly_one_of !== undefined) {
      let data23 = data.exactly_one_of;
      if (data23 && typeof data23 == 'object' && !Array.isArray(data23)) {
        for (const key9 in data23) {
          const _errs44 = errors;
          if (
            !validate338(key9, {
              instancePath: instancePath + '/exactly_one_of',
              parentData: data23,
              parentDataProperty: 'exactly_one_of',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
          var valid15 = _errs44 === errors;
          if (!valid15) {
            const err27 = {
              instancePath: instancePath + '/exactly_one_of',
              schemaPath: '#/properties/exactly_one_of/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key9 },
            };
            if (vErrors === null) {
              vErrors = [err27];
            } else {
              vErrors.push(err27);
            }
            errors++;
          }
        }
        for (const key10 in data23) {
          if (
            !validate360(data23[key10], {
              instancePath:
                instancePath + '/exactly_one_of/' + key10.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data23,
              parentDataProperty: key10,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate360.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err28 = {
          instancePath: instancePath + '/exactly_one_of',
          schemaPath: '#/properties/exactly_one_of/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err28];
        } else {
          vErrors.push(err28);
        }
        errors++;
      }
    }
  } else {
    const err29 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err29];
    } else {
      vErrors.push(err29);
    }
    errors++;
  }
  validate337.errors = vErrors;
  return errors === 0;
}
validate337.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const set = validate102;

export const ward = validate488;
const schema120 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward.schema.json',
  type: 'object',
  properties: {
    ward: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    ladder: { $ref: 'dictionary.schema.json#/$defs/name' },
    reads_with: { type: 'array', items: { $ref: '#/$defs/reads_with' }, minItems: 1, maxItems: 100 },
  },
  required: ['ward', 'edition', 'title', 'ladder', 'reads_with'],
  additionalProperties: false,
  $defs: {
    reads_with: {
      type: 'object',
      properties: {
        protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
        edition: { type: 'integer', minimum: 1, maximum: 100000 },
      },
      required: ['protocol'],
      additionalProperties: false,
    },
  },
};

function validate489(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate489.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 60) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 60 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (!pattern3.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[a-z][a-z0-9_]*$' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate489.errors = vErrors;
  return errors === 0;
}
validate489.evaluated = { dynamicProps: false, dynamicItems: false };

function validate491(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate491.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 2000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 2000 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (func1(data) < 1) {
      const err1 = { instancePath, schemaPath: '#/minLength', keyword: 'minLength', params: { limit: 1 } };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
  } else {
    const err2 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'string' } };
    if (vErrors === null) {
      vErrors = [err2];
    } else {
      vErrors.push(err2);
    }
    errors++;
  }
  validate491.errors = vErrors;
  return errors === 0;
}
validate491.evaluated = { dynamicProps: false, dynamicItems: false };

const schema123 = {
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
  },
  required: ['protocol'],
  additionalProperties: false,
};

function validate494(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate494.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.protocol === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'protocol' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'edition')) {
        const err1 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
    }
    if (data.protocol !== undefined) {
      if (
        !validate489(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate489.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err2 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 100000 || isNaN(data1)) {
          const err3 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
      }
    }
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate494.errors = vErrors;
  return errors === 0;
}
validate494.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate488(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="ward.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate488.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.ward === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ward' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.edition === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.title === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.ladder === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ladder' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.reads_with === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'reads_with' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(
        key0 === 'ward' ||
        key0 === 'edition' ||
        key0 === 'title' ||
        key0 === 'ladder' ||
        key0 === 'reads_with'
      )) {
        const err5 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
    }
    if (data.ward !== undefined) {
      if (
        !validate489(data.ward, {
          instancePath: instancePath + '/ward',
          parentData: data,
          parentDataProperty: 'ward',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate489.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err6 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err6];
        } else {
          vErrors.push(err6);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 100000 || isNaN(data1)) {
          const err7 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err8 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
      }
    }
    if (data.title !== undefined) {
      if (
        !validate491(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.ladder !== undefined) {
      if (
        !validate489(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate489.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_with !== undefined) {
      let data4 = data.reads_with;
      if (Array.isArray(data4)) {
        if (data4.length > 100) {
          const err9 = {
            instancePath: instancePath + '/reads_with',
            schemaPath: '#/properties/reads_with/maxItems',
            keyword: 'maxItems',
            params: { limit: 100 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (data4.length < 1) {
          const err10 = {
            instancePath: instancePath + '/reads_with',
            schemaPath: '#/properties/reads_with/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate494(data4[i0], {
              instancePath: instancePath + '/reads_with/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate494.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = {
          instancePath: instancePath + '/reads_with',
          schemaPath: '#/properties/reads_with/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
  } else {
    const err12 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err12];
    } else {
      vErrors.push(err12);
    }
    errors++;
  }
  validate488.errors = vErrors;
  return errors === 0;
}
validate488.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function joined(all, more) {
  if (all === null) return more;
  for (let at = 0; at < more.length && all.length < 10000; at++) all.push(more[at]);
  return all;
}
