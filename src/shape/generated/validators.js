// Generated from schema/*.schema.json; do not edit. npm run generate

export const approvers = validate52;
const schema19 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'approvers.schema.json',
  type: 'object',
  properties: {
    approvers: { $ref: 'dictionary.schema.json#/$defs/name' },
    signing: { $ref: 'dictionary.schema.json#/$defs/yes' },
    needs: { type: 'array', items: { $ref: '#/$defs/need' }, minItems: 1, maxItems: 20 },
    people: { type: 'array', items: { $ref: '#/$defs/approver' }, minItems: 1, maxItems: 200 },
  },
  required: ['approvers', 'signing', 'needs', 'people'],
  additionalProperties: false,
  $defs: {
    role: { type: 'string', minLength: 1, maxLength: 80 },
    key: { type: 'string', pattern: '^[A-Za-z0-9_-]{43}$' },
    need: {
      type: 'object',
      properties: { role: { $ref: '#/$defs/role' }, people: { type: 'integer', minimum: 1, maximum: 20 } },
      required: ['role', 'people'],
      additionalProperties: false,
    },
    approver: {
      type: 'object',
      properties: {
        name: { $ref: 'edition.schema.json#/$defs/person' },
        roles: { type: 'array', items: { $ref: '#/$defs/role' }, minItems: 1, maxItems: 10 },
        key: { $ref: '#/$defs/key' },
      },
      required: ['name', 'roles'],
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

const schema24 = { type: ['string', 'boolean'], enum: ['yes', 'no', true, false] };

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
  validate97.errors = vErrors;
  return errors === 0;
}
validate97.evaluated = { dynamicProps: false, dynamicItems: false };

const schema34 = {
  type: 'object',
  properties: { role: { $ref: '#/$defs/role' }, people: { type: 'integer', minimum: 1, maximum: 20 } },
  required: ['role', 'people'],
  additionalProperties: false,
};
const schema35 = { type: 'string', minLength: 1, maxLength: 80 };

function validate100(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate100.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 80) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 80 } };
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
  validate100.errors = vErrors;
  return errors === 0;
}
validate100.evaluated = { dynamicProps: false, dynamicItems: false };

function validate99(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate99.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.role === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'role' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.people === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'people' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'role' || key0 === 'people')) {
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
    if (data.role !== undefined) {
      if (
        !validate100(data.role, {
          instancePath: instancePath + '/role',
          parentData: data,
          parentDataProperty: 'role',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate100.errors);
        errors = vErrors.length;
      }
    }
    if (data.people !== undefined) {
      let data1 = data.people;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/people',
          schemaPath: '#/properties/people/type',
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
        if (data1 > 20 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/minimum',
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
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate99.errors = vErrors;
  return errors === 0;
}
validate99.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema36 = {
  type: 'object',
  properties: {
    name: { $ref: 'edition.schema.json#/$defs/person' },
    roles: { type: 'array', items: { $ref: '#/$defs/role' }, minItems: 1, maxItems: 10 },
    key: { $ref: '#/$defs/key' },
  },
  required: ['name', 'roles'],
  additionalProperties: false,
};
const schema41 = { type: 'string', minLength: 1, maxLength: 80 };

function validate282(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate282.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 80) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 80 } };
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
  validate282.errors = vErrors;
  return errors === 0;
}
validate282.evaluated = { dynamicProps: false, dynamicItems: false };

const schema78 = { type: 'string', pattern: '^[A-Za-z0-9_-]{43}$' };
const pattern16 = new RegExp('^[A-Za-z0-9_-]{43}$', 'u');

function validate285(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate285.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (!pattern16.test(data)) {
      const err0 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[A-Za-z0-9_-]{43}$' },
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
  validate285.errors = vErrors;
  return errors === 0;
}
validate285.evaluated = { dynamicProps: false, dynamicItems: false };

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
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.name === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'name' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.roles === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'roles' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'name' || key0 === 'roles' || key0 === 'key')) {
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
    if (data.name !== undefined) {
      if (
        !validate282(data.name, {
          instancePath: instancePath + '/name',
          parentData: data,
          parentDataProperty: 'name',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate282.errors);
        errors = vErrors.length;
      }
    }
    if (data.roles !== undefined) {
      let data1 = data.roles;
      if (Array.isArray(data1)) {
        if (data1.length > 10) {
          const err3 = {
            instancePath: instancePath + '/roles',
            schemaPath: '#/properties/roles/maxItems',
            keyword: 'maxItems',
            params: { limit: 10 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (data1.length < 1) {
          const err4 = {
            instancePath: instancePath + '/roles',
            schemaPath: '#/properties/roles/minItems',
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
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate100(data1[i0], {
              instancePath: instancePath + '/roles/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate100.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/roles',
          schemaPath: '#/properties/roles/type',
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
    if (data.key !== undefined) {
      if (
        !validate285(data.key, {
          instancePath: instancePath + '/key',
          parentData: data,
          parentDataProperty: 'key',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate285.errors);
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
  validate103.errors = vErrors;
  return errors === 0;
}
validate103.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate52(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="approvers.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate52.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.approvers === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'approvers' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.signing === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'signing' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.needs === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'needs' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.people === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'people' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'approvers' || key0 === 'signing' || key0 === 'needs' || key0 === 'people')) {
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
    if (data.approvers !== undefined) {
      if (
        !validate95(data.approvers, {
          instancePath: instancePath + '/approvers',
          parentData: data,
          parentDataProperty: 'approvers',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate95.errors);
        errors = vErrors.length;
      }
    }
    if (data.signing !== undefined) {
      if (
        !validate97(data.signing, {
          instancePath: instancePath + '/signing',
          parentData: data,
          parentDataProperty: 'signing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate97.errors);
        errors = vErrors.length;
      }
    }
    if (data.needs !== undefined) {
      let data2 = data.needs;
      if (Array.isArray(data2)) {
        if (data2.length > 20) {
          const err5 = {
            instancePath: instancePath + '/needs',
            schemaPath: '#/properties/needs/maxItems',
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
        if (data2.length < 1) {
          const err6 = {
            instancePath: instancePath + '/needs',
            schemaPath: '#/properties/needs/minItems',
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
        const len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate99(data2[i0], {
              instancePath: instancePath + '/needs/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate99.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/needs',
          schemaPath: '#/properties/needs/type',
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
    if (data.people !== undefined) {
      let data4 = data.people;
      if (Array.isArray(data4)) {
        if (data4.length > 200) {
          const err8 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/maxItems',
            keyword: 'maxItems',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data4.length < 1) {
          const err9 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        const len1 = data4.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate103(data4[i1], {
              instancePath: instancePath + '/people/' + i1,
              parentData: data4,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate103.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = {
          instancePath: instancePath + '/people',
          schemaPath: '#/properties/people/type',
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
  validate52.errors = vErrors;
  return errors === 0;
}
validate52.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const cases = validate288;
const schema79 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'cases.schema.json',
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    cases: { type: 'array', items: { $ref: '#/$defs/case' }, maxItems: 100000 },
    unguarded: { type: 'array', items: { $ref: '#/$defs/unguarded_change' }, maxItems: 10000 },
  },
  required: ['protocol', 'cases'],
  additionalProperties: false,
  $defs: {
    unguarded_change: {
      type: 'object',
      properties: {
        change: { $ref: 'dictionary.schema.json#/$defs/text' },
        accepted: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      required: ['change', 'accepted'],
      additionalProperties: false,
    },
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
        truth: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/expected_range' },
        },
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
    expected_range: {
      type: 'object',
      properties: { low: { type: 'number' }, high: { type: 'number' } },
      required: ['low', 'high'],
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
        output_and_vessels: {
          type: 'string',
          enum: ['output_falls_vessels_squeeze', 'vessels_have_let_go', 'both_fail', 'neither', 'cannot_say'],
        },
      },
      additionalProperties: false,
    },
  },
};

function validate289(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate289.evaluated;
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
  validate289.errors = vErrors;
  return errors === 0;
}
validate289.evaluated = { dynamicProps: false, dynamicItems: false };

const schema81 = {
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

function validate292(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate292.evaluated;
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
  validate292.errors = vErrors;
  return errors === 0;
}
validate292.evaluated = { dynamicProps: false, dynamicItems: false };

const schema83 = {
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
const schema84 = {
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

function validate298(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate298.evaluated;
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
  validate298.errors = vErrors;
  return errors === 0;
}
validate298.evaluated = { dynamicProps: false, dynamicItems: false };

function validate297(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate297.evaluated;
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
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema84.type } };
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
        !validate298(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate298.errors);
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
          params: { type: schema84.properties.value.type },
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
            !validate298(data1[i1], {
              instancePath: instancePath + '/value/' + i1,
              parentData: data1,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate298.errors);
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
          params: { type: schema84.properties.unobtainable.type },
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
          params: { type: schema84.properties.declined.type },
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
  validate297.errors = vErrors;
  return errors === 0;
}
validate297.evaluated = { props: true, items: true, dynamicProps: false, dynamicItems: false };

const schema86 = { type: 'string', maxLength: 40 };

function validate302(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate302.evaluated;
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
  validate302.errors = vErrors;
  return errors === 0;
}
validate302.evaluated = { dynamicProps: false, dynamicItems: false };

const schema87 = {
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
const schema88 = {
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

function validate308(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate308.evaluated;
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
  validate308.errors = vErrors;
  return errors === 0;
}
validate308.evaluated = { dynamicProps: false, dynamicItems: false };

function validate306(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate306.evaluated;
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
          params: { type: schema88.properties.value.type },
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
            !validate298(data0[i0], {
              instancePath: instancePath + '/value/' + i0,
              parentData: data0,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate298.errors);
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
        !validate308(data.by, {
          instancePath: instancePath + '/by',
          parentData: data,
          parentDataProperty: 'by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate308.errors);
        errors = vErrors.length;
      }
    }
    if (data.reason !== undefined) {
      if (
        !validate308(data.reason, {
          instancePath: instancePath + '/reason',
          parentData: data,
          parentDataProperty: 'reason',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate308.errors);
        errors = vErrors.length;
      }
    }
    if (data.at !== undefined) {
      if (
        !validate302(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate302.errors);
        errors = vErrors.length;
      }
    }
    if (data.until !== undefined) {
      if (
        !validate302(data.until, {
          instancePath: instancePath + '/until',
          parentData: data,
          parentDataProperty: 'until',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate302.errors);
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
  validate306.errors = vErrors;
  return errors === 0;
}
validate306.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

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
            !validate298(key1, {
              instancePath: instancePath + '/standing',
              parentData: data0,
              parentDataProperty: 'standing',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate298.errors);
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
            !validate306(data0[key2], {
              instancePath: instancePath + '/standing/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data0,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate306.errors);
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
            !validate298(key3, {
              instancePath: instancePath + '/limits',
              parentData: data2,
              parentDataProperty: 'limits',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate298.errors);
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
            !validate306(data2[key4], {
              instancePath: instancePath + '/limits/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate306.errors);
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
  validate304.errors = vErrors;
  return errors === 0;
}
validate304.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema90 = {
  type: 'object',
  properties: { at: { $ref: '#/$defs/time' } },
  required: ['at'],
  additionalProperties: { $ref: '#/$defs/observed' },
};

function validate317(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate317.evaluated;
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
          !validate297(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate297.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.at !== undefined) {
      if (
        !validate302(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate302.errors);
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
  validate317.errors = vErrors;
  return errors === 0;
}
validate317.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate296(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="set.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate296.evaluated;
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
          !validate297(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate297.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.at !== undefined) {
      if (
        !validate302(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate302.errors);
        errors = vErrors.length;
      }
    }
    if (data.patient !== undefined) {
      if (
        !validate304(data.patient, {
          instancePath: instancePath + '/patient',
          parentData: data,
          parentDataProperty: 'patient',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate304.errors);
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
            !validate317(data3[i0], {
              instancePath: instancePath + '/sets/' + i0,
              parentData: data3,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate317.errors);
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
  validate296.errors = vErrors;
  return errors === 0;
}
validate296.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema91 = {
  type: 'object',
  properties: {
    level: { $ref: '#/$defs/expected_level' },
    applies: { type: ['string', 'boolean'], enum: ['yes', 'no', 'unsure', true, false] },
    met: { $ref: '#/$defs/names' },
    not_met: { $ref: '#/$defs/names' },
    undecided: { $ref: '#/$defs/names' },
    explained: { $ref: '#/$defs/names' },
    faults: { $ref: '#/$defs/names' },
    truth: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/expected_range' },
    },
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
const schema92 = {
  type: 'object',
  properties: {
    at_least: { $ref: 'dictionary.schema.json#/$defs/name' },
    could_be: { $ref: 'dictionary.schema.json#/$defs/name' },
    settled: { $ref: 'dictionary.schema.json#/$defs/yes' },
  },
  minProperties: 1,
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
  validate327.errors = vErrors;
  return errors === 0;
}
validate327.evaluated = { dynamicProps: false, dynamicItems: false };

function validate324(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate324.evaluated;
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
        !validate289(data.at_least, {
          instancePath: instancePath + '/at_least',
          parentData: data,
          parentDataProperty: 'at_least',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be !== undefined) {
      if (
        !validate289(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
        errors = vErrors.length;
      }
    }
    if (data.settled !== undefined) {
      if (
        !validate327(data.settled, {
          instancePath: instancePath + '/settled',
          parentData: data,
          parentDataProperty: 'settled',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate327.errors);
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
  validate324.errors = vErrors;
  return errors === 0;
}
validate324.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema94 = { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' }, maxItems: 1000 };

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
        !validate289(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
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
  validate330.errors = vErrors;
  return errors === 0;
}
validate330.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema95 = {
  type: 'object',
  properties: { low: { type: 'number' }, high: { type: 'number' } },
  required: ['low', 'high'],
  additionalProperties: false,
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
    for (const key0 in data) {
      if (!(key0 === 'low' || key0 === 'high')) {
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
    if (data.low !== undefined) {
      let data0 = data.low;
      if (!(typeof data0 == 'number' && isFinite(data0))) {
        const err3 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
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
    if (data.high !== undefined) {
      let data1 = data.high;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
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
  } else {
    const err5 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err5];
    } else {
      vErrors.push(err5);
    }
    errors++;
  }
  validate338.errors = vErrors;
  return errors === 0;
}
validate338.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema96 = {
  type: ['number', 'string', 'object'],
  properties: { low: { type: 'number' }, high: { type: 'number' } },
  required: ['low', 'high'],
  additionalProperties: false,
  maxLength: 20,
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
  if (
    !(typeof data == 'number' && isFinite(data)) &&
    typeof data !== 'string' &&
    !(data && typeof data == 'object' && !Array.isArray(data))
  ) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema96.type } };
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
  validate346.errors = vErrors;
  return errors === 0;
}
validate346.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

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
      if (!func5.call(schema91.properties, key0)) {
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
        !validate324(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate324.errors);
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
          params: { type: schema91.properties.applies.type },
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
          params: { allowedValues: schema91.properties.applies.enum },
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
        !validate330(data.met, {
          instancePath: instancePath + '/met',
          parentData: data,
          parentDataProperty: 'met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_met !== undefined) {
      if (
        !validate330(data.not_met, {
          instancePath: instancePath + '/not_met',
          parentData: data,
          parentDataProperty: 'not_met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.undecided !== undefined) {
      if (
        !validate330(data.undecided, {
          instancePath: instancePath + '/undecided',
          parentData: data,
          parentDataProperty: 'undecided',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained !== undefined) {
      if (
        !validate330(data.explained, {
          instancePath: instancePath + '/explained',
          parentData: data,
          parentDataProperty: 'explained',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.faults !== undefined) {
      if (
        !validate330(data.faults, {
          instancePath: instancePath + '/faults',
          parentData: data,
          parentDataProperty: 'faults',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.truth !== undefined) {
      let data7 = data.truth;
      if (data7 && typeof data7 == 'object' && !Array.isArray(data7)) {
        for (const key1 in data7) {
          const _errs12 = errors;
          if (
            !validate289(key1, {
              instancePath: instancePath + '/truth',
              parentData: data7,
              parentDataProperty: 'truth',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate289.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs12 === errors;
          if (!valid1) {
            const err4 = {
              instancePath: instancePath + '/truth',
              schemaPath: '#/properties/truth/propertyNames',
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
        for (const key2 in data7) {
          if (
            !validate338(data7[key2], {
              instancePath: instancePath + '/truth/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data7,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/truth',
          schemaPath: '#/properties/truth/type',
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
    if (data.not_reliable !== undefined) {
      if (
        !validate330(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.refused !== undefined) {
      if (
        !validate330(data.refused, {
          instancePath: instancePath + '/refused',
          parentData: data,
          parentDataProperty: 'refused',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.questioned !== undefined) {
      if (
        !validate330(data.questioned, {
          instancePath: instancePath + '/questioned',
          parentData: data,
          parentDataProperty: 'questioned',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.take_first !== undefined) {
      if (
        !validate330(data.take_first, {
          instancePath: instancePath + '/take_first',
          parentData: data,
          parentDataProperty: 'take_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask_first !== undefined) {
      if (
        !validate330(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.measures !== undefined) {
      let data14 = data.measures;
      if (data14 && typeof data14 == 'object' && !Array.isArray(data14)) {
        for (const key3 in data14) {
          const _errs22 = errors;
          if (
            !validate289(key3, {
              instancePath: instancePath + '/measures',
              parentData: data14,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate289.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs22 === errors;
          if (!valid3) {
            const err6 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        }
        for (const key4 in data14) {
          if (
            !validate346(data14[key4], {
              instancePath: instancePath + '/measures/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data14,
              parentDataProperty: key4,
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
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
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
    if (data.nothing_else_met !== undefined) {
      if (
        !validate327(data.nothing_else_met, {
          instancePath: instancePath + '/nothing_else_met',
          parentData: data,
          parentDataProperty: 'nothing_else_met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate327.errors);
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
  validate323.errors = vErrors;
  return errors === 0;
}
validate323.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema97 = {
  type: 'object',
  properties: {
    ask_first: { $ref: 'dictionary.schema.json#/$defs/text' },
    common_mistake: { $ref: 'dictionary.schema.json#/$defs/text' },
    output_and_vessels: {
      type: 'string',
      enum: ['output_falls_vessels_squeeze', 'vessels_have_let_go', 'both_fail', 'neither', 'cannot_say'],
    },
  },
  additionalProperties: false,
};

function validate350(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate350.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'ask_first' || key0 === 'common_mistake' || key0 === 'output_and_vessels')) {
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
        !validate292(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.common_mistake !== undefined) {
      if (
        !validate292(data.common_mistake, {
          instancePath: instancePath + '/common_mistake',
          parentData: data,
          parentDataProperty: 'common_mistake',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.output_and_vessels !== undefined) {
      let data2 = data.output_and_vessels;
      if (typeof data2 !== 'string') {
        const err1 = {
          instancePath: instancePath + '/output_and_vessels',
          schemaPath: '#/properties/output_and_vessels/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      if (!(
        data2 === 'output_falls_vessels_squeeze' ||
        data2 === 'vessels_have_let_go' ||
        data2 === 'both_fail' ||
        data2 === 'neither' ||
        data2 === 'cannot_say'
      )) {
        const err2 = {
          instancePath: instancePath + '/output_and_vessels',
          schemaPath: '#/properties/output_and_vessels/enum',
          keyword: 'enum',
          params: { allowedValues: schema97.properties.output_and_vessels.enum },
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
  validate350.errors = vErrors;
  return errors === 0;
}
validate350.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate291(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate291.evaluated;
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
        !validate292(data.case, {
          instancePath: instancePath + '/case',
          parentData: data,
          parentDataProperty: 'case',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.story !== undefined) {
      if (
        !validate292(data.story, {
          instancePath: instancePath + '/story',
          parentData: data,
          parentDataProperty: 'story',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate289(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
        errors = vErrors.length;
      }
    }
    if (data.given !== undefined) {
      if (
        !validate296(data.given, {
          instancePath: instancePath + '/given',
          parentData: data,
          parentDataProperty: 'given',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate296.errors);
        errors = vErrors.length;
      }
    }
    if (data.series !== undefined) {
      if (
        !validate296(data.series, {
          instancePath: instancePath + '/series',
          parentData: data,
          parentDataProperty: 'series',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate296.errors);
        errors = vErrors.length;
      }
    }
    if (data.expect !== undefined) {
      if (
        !validate323(data.expect, {
          instancePath: instancePath + '/expect',
          parentData: data,
          parentDataProperty: 'expect',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate323.errors);
        errors = vErrors.length;
      }
    }
    if (data.teach !== undefined) {
      if (
        !validate350(data.teach, {
          instancePath: instancePath + '/teach',
          parentData: data,
          parentDataProperty: 'teach',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate350.errors);
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
  validate291.errors = vErrors;
  return errors === 0;
}
validate291.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema98 = {
  type: 'object',
  properties: {
    change: { $ref: 'dictionary.schema.json#/$defs/text' },
    accepted: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['change', 'accepted'],
  additionalProperties: false,
};

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
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.change === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'change' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.accepted === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'accepted' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'change' || key0 === 'accepted')) {
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
    if (data.change !== undefined) {
      if (
        !validate292(data.change, {
          instancePath: instancePath + '/change',
          parentData: data,
          parentDataProperty: 'change',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate292(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
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
  validate355.errors = vErrors;
  return errors === 0;
}
validate355.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate288(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="cases.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate288.evaluated;
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
      if (!(key0 === 'protocol' || key0 === 'cases' || key0 === 'unguarded')) {
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
        !validate289(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
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
            !validate291(data1[i0], {
              instancePath: instancePath + '/cases/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate291.errors);
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
    if (data.unguarded !== undefined) {
      let data3 = data.unguarded;
      if (Array.isArray(data3)) {
        if (data3.length > 10000) {
          const err5 = {
            instancePath: instancePath + '/unguarded',
            schemaPath: '#/properties/unguarded/maxItems',
            keyword: 'maxItems',
            params: { limit: 10000 },
          };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
        const len1 = data3.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate355(data3[i1], {
              instancePath: instancePath + '/unguarded/' + i1,
              parentData: data3,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate355.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/unguarded',
          schemaPath: '#/properties/unguarded/type',
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
  } else {
    const err7 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err7];
    } else {
      vErrors.push(err7);
    }
    errors++;
  }
  validate288.errors = vErrors;
  return errors === 0;
}
validate288.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

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

export const edition = validate104;
const schema37 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'edition.schema.json',
  type: 'object',
  properties: {
    sealed: { type: 'string', enum: ['protocol', 'ward'] },
    name: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 9999 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    language: { type: 'integer', minimum: 1, maximum: 9999 },
    kit: { type: 'string', maxLength: 40 },
    sealed_on: { $ref: '#/$defs/calendar_day' },
    authors: { type: 'array', items: { $ref: '#/$defs/person' }, minItems: 1, maxItems: 50 },
    approvers: { $ref: '#/$defs/digest' },
    digest: { $ref: '#/$defs/digest' },
    logic_digest: { $ref: '#/$defs/digest' },
    review_by: { $ref: '#/$defs/calendar_day' },
    reads_with: { type: 'array', items: { $ref: '#/$defs/member' } },
    dictionary: { $ref: 'dictionary.schema.json' },
    ladder: { $ref: '#/$defs/whole' },
    texts: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/whole' },
      minProperties: 1,
      maxProperties: 200,
    },
    cases: { $ref: '#/$defs/whole' },
    outcomes: { type: 'array', items: { $ref: '#/$defs/answered' }, minItems: 1, maxItems: 100000 },
    seal: { $ref: '#/$defs/digest' },
  },
  required: [
    'sealed',
    'name',
    'edition',
    'title',
    'language',
    'kit',
    'sealed_on',
    'digest',
    'logic_digest',
    'dictionary',
    'ladder',
    'texts',
    'cases',
    'outcomes',
    'seal',
  ],
  additionalProperties: false,
  $defs: {
    digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
    calendar_day: { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
    whole: { type: 'string', minLength: 1, maxLength: 1048576 },
    person: { type: 'string', minLength: 1, maxLength: 80 },
    member: {
      type: 'object',
      properties: {
        protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
        edition: { type: 'integer', minimum: 1, maximum: 9999 },
        digest: { $ref: '#/$defs/digest' },
      },
      required: ['protocol', 'edition', 'digest'],
      additionalProperties: false,
    },
    answered: {
      type: 'object',
      properties: {
        case: { $ref: 'dictionary.schema.json#/$defs/text' },
        answers: { $ref: '#/$defs/reading' },
      },
      required: ['case', 'answers'],
      additionalProperties: false,
    },
    reading: {
      type: 'object',
      properties: {
        applies: { type: 'string', enum: ['yes', 'no', 'unsure'] },
        level: { $ref: 'outcome.schema.json#/$defs/level' },
        met: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        undecided: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        counts: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        explained: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        not_reliable: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        measures: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: 'outcome.schema.json#/$defs/measure' },
        },
        ask_first: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        take_first: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        missing: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        refused: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        questioned: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        faults: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        in_force: { $ref: 'dictionary.schema.json#/$defs/name' },
        may_step_down: { type: 'boolean' },
        plan: { $ref: 'dictionary.schema.json#/$defs/name' },
        tell: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/text' } },
        reads: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/reading' },
        },
      },
      required: ['level'],
      additionalProperties: false,
    },
  },
};

function validate105(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate105.evaluated;
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
  validate105.errors = vErrors;
  return errors === 0;
}
validate105.evaluated = { dynamicProps: false, dynamicItems: false };

function validate107(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate107.evaluated;
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
  validate107.errors = vErrors;
  return errors === 0;
}
validate107.evaluated = { dynamicProps: false, dynamicItems: false };

const schema40 = { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' };
const pattern9 = new RegExp('^[0-9]{4}-[0-9]{2}-[0-9]{2}$', 'u');

function validate109(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate109.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (!pattern9.test(data)) {
      const err0 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
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
  validate109.errors = vErrors;
  return errors === 0;
}
validate109.evaluated = { dynamicProps: false, dynamicItems: false };

function validate111(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate111.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 80) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 80 } };
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
  validate111.errors = vErrors;
  return errors === 0;
}
validate111.evaluated = { dynamicProps: false, dynamicItems: false };

const schema42 = { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' };
const pattern10 = new RegExp('^sha256:[0-9a-f]{64}$', 'u');

function validate113(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate113.evaluated;
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
        params: { pattern: '^sha256:[0-9a-f]{64}$' },
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
  validate113.errors = vErrors;
  return errors === 0;
}
validate113.evaluated = { dynamicProps: false, dynamicItems: false };

const schema43 = {
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 9999 },
    digest: { $ref: '#/$defs/digest' },
  },
  required: ['protocol', 'edition', 'digest'],
  additionalProperties: false,
};

function validate118(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate118.evaluated;
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
    if (data.digest === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'edition' || key0 === 'digest')) {
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
    if (data.protocol !== undefined) {
      if (
        !validate105(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate105.errors);
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
        if (data1 > 9999 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 9999 },
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
    if (data.digest !== undefined) {
      if (
        !validate113(data.digest, {
          instancePath: instancePath + '/digest',
          parentData: data,
          parentDataProperty: 'digest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate113.errors);
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
  validate118.errors = vErrors;
  return errors === 0;
}
validate118.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema44 = { type: 'string', minLength: 1, maxLength: 1048576 };

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
  if (typeof data === 'string') {
    if (func1(data) > 1048576) {
      const err0 = {
        instancePath,
        schemaPath: '#/maxLength',
        keyword: 'maxLength',
        params: { limit: 1048576 },
      };
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
  validate123.errors = vErrors;
  return errors === 0;
}
validate123.evaluated = { dynamicProps: false, dynamicItems: false };

const schema45 = {
  type: 'object',
  properties: { case: { $ref: 'dictionary.schema.json#/$defs/text' }, answers: { $ref: '#/$defs/reading' } },
  required: ['case', 'answers'],
  additionalProperties: false,
};
const schema46 = {
  type: 'object',
  properties: {
    applies: { type: 'string', enum: ['yes', 'no', 'unsure'] },
    level: { $ref: 'outcome.schema.json#/$defs/level' },
    met: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    undecided: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    counts: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    explained: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    not_reliable: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    measures: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: 'outcome.schema.json#/$defs/measure' },
    },
    ask_first: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    take_first: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    missing: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    refused: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    questioned: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    faults: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    in_force: { $ref: 'dictionary.schema.json#/$defs/name' },
    may_step_down: { type: 'boolean' },
    plan: { $ref: 'dictionary.schema.json#/$defs/name' },
    tell: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/text' } },
    reads: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/reading' },
    },
  },
  required: ['level'],
  additionalProperties: false,
};
const schema57 = {
  type: ['object', 'null'],
  properties: {
    at_least: { type: ['string', 'null'], maxLength: 60 },
    could_be: { $ref: '#/$defs/name' },
    settled: { type: 'boolean' },
  },
  required: ['at_least', 'could_be', 'settled'],
  additionalProperties: false,
};

function validate137(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate137.evaluated;
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
  validate137.errors = vErrors;
  return errors === 0;
}
validate137.evaluated = { dynamicProps: false, dynamicItems: false };

function validate253(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate253.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!(data && typeof data == 'object' && !Array.isArray(data)) && data !== null) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema57.type } };
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
          params: { type: schema57.properties.at_least.type },
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
        !validate137(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate253.errors = vErrors;
  return errors === 0;
}
validate253.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema62 = {
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
const schema63 = { type: 'string', pattern: '^-?[0-9]+/[0-9]+$' };
const pattern15 = new RegExp('^-?[0-9]+/[0-9]+$', 'u');

function validate186(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate186.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (!pattern15.test(data)) {
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
  validate186.errors = vErrors;
  return errors === 0;
}
validate186.evaluated = { dynamicProps: false, dynamicItems: false };

const schema53 = { type: 'string', maxLength: 40 };

function validate142(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate142.evaluated;
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
  validate142.errors = vErrors;
  return errors === 0;
}
validate142.evaluated = { dynamicProps: false, dynamicItems: false };

const schema60 = { type: 'array', items: { $ref: '#/$defs/name' } };

function validate169(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate169.evaluated;
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
        !validate137(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate169.errors = vErrors;
  return errors === 0;
}
validate169.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate262(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate262.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!func5.call(schema62.properties, key0)) {
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
        !validate186(data.exact, {
          instancePath: instancePath + '/exact',
          parentData: data,
          parentDataProperty: 'exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate186.errors);
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
        !validate186(data.low_exact, {
          instancePath: instancePath + '/low_exact',
          parentData: data,
          parentDataProperty: 'low_exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate186.errors);
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
        !validate186(data.high_exact, {
          instancePath: instancePath + '/high_exact',
          parentData: data,
          parentDataProperty: 'high_exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate186.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
        !validate169(data.waits_for, {
          instancePath: instancePath + '/waits_for',
          parentData: data,
          parentDataProperty: 'waits_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
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
  validate262.errors = vErrors;
  return errors === 0;
}
validate262.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const wrapper0 = { validate: validate130 };

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
      if (!func5.call(schema46.properties, key0)) {
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
    if (data.applies !== undefined) {
      let data0 = data.applies;
      if (typeof data0 !== 'string') {
        const err2 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/type',
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
      if (!(data0 === 'yes' || data0 === 'no' || data0 === 'unsure')) {
        const err3 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/enum',
          keyword: 'enum',
          params: { allowedValues: schema46.properties.applies.enum },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate253(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate253.errors);
        errors = vErrors.length;
      }
    }
    if (data.met !== undefined) {
      let data2 = data.met;
      if (Array.isArray(data2)) {
        const len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate105(data2[i0], {
              instancePath: instancePath + '/met/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err4 = {
          instancePath: instancePath + '/met',
          schemaPath: '#/properties/met/type',
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
    if (data.undecided !== undefined) {
      let data4 = data.undecided;
      if (Array.isArray(data4)) {
        const len1 = data4.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate105(data4[i1], {
              instancePath: instancePath + '/undecided/' + i1,
              parentData: data4,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/undecided',
          schemaPath: '#/properties/undecided/type',
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
    if (data.counts !== undefined) {
      let data6 = data.counts;
      if (Array.isArray(data6)) {
        const len2 = data6.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate105(data6[i2], {
              instancePath: instancePath + '/counts/' + i2,
              parentData: data6,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/counts',
          schemaPath: '#/properties/counts/type',
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
    if (data.explained !== undefined) {
      let data8 = data.explained;
      if (Array.isArray(data8)) {
        const len3 = data8.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate105(data8[i3], {
              instancePath: instancePath + '/explained/' + i3,
              parentData: data8,
              parentDataProperty: i3,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/explained',
          schemaPath: '#/properties/explained/type',
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
    if (data.not_reliable !== undefined) {
      let data10 = data.not_reliable;
      if (Array.isArray(data10)) {
        const len4 = data10.length;
        for (let i4 = 0; i4 < len4; i4++) {
          if (
            !validate105(data10[i4], {
              instancePath: instancePath + '/not_reliable/' + i4,
              parentData: data10,
              parentDataProperty: i4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/not_reliable',
          schemaPath: '#/properties/not_reliable/type',
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
    if (data.measures !== undefined) {
      let data12 = data.measures;
      if (data12 && typeof data12 == 'object' && !Array.isArray(data12)) {
        for (const key1 in data12) {
          const _errs22 = errors;
          if (
            !validate105(key1, {
              instancePath: instancePath + '/measures',
              parentData: data12,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
          var valid11 = _errs22 === errors;
          if (!valid11) {
            const err9 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err9];
            } else {
              vErrors.push(err9);
            }
            errors++;
          }
        }
        for (const key2 in data12) {
          if (
            !validate262(data12[key2], {
              instancePath: instancePath + '/measures/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data12,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate262.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err10 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.ask_first !== undefined) {
      let data14 = data.ask_first;
      if (Array.isArray(data14)) {
        const len5 = data14.length;
        for (let i5 = 0; i5 < len5; i5++) {
          if (
            !validate105(data14[i5], {
              instancePath: instancePath + '/ask_first/' + i5,
              parentData: data14,
              parentDataProperty: i5,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = {
          instancePath: instancePath + '/ask_first',
          schemaPath: '#/properties/ask_first/type',
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
    if (data.take_first !== undefined) {
      let data16 = data.take_first;
      if (Array.isArray(data16)) {
        const len6 = data16.length;
        for (let i6 = 0; i6 < len6; i6++) {
          if (
            !validate105(data16[i6], {
              instancePath: instancePath + '/take_first/' + i6,
              parentData: data16,
              parentDataProperty: i6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/take_first',
          schemaPath: '#/properties/take_first/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.missing !== undefined) {
      let data18 = data.missing;
      if (Array.isArray(data18)) {
        const len7 = data18.length;
        for (let i7 = 0; i7 < len7; i7++) {
          if (
            !validate105(data18[i7], {
              instancePath: instancePath + '/missing/' + i7,
              parentData: data18,
              parentDataProperty: i7,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err13 = {
          instancePath: instancePath + '/missing',
          schemaPath: '#/properties/missing/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.refused !== undefined) {
      let data20 = data.refused;
      if (Array.isArray(data20)) {
        const len8 = data20.length;
        for (let i8 = 0; i8 < len8; i8++) {
          if (
            !validate105(data20[i8], {
              instancePath: instancePath + '/refused/' + i8,
              parentData: data20,
              parentDataProperty: i8,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err14 = {
          instancePath: instancePath + '/refused',
          schemaPath: '#/properties/refused/type',
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
    if (data.questioned !== undefined) {
      let data22 = data.questioned;
      if (Array.isArray(data22)) {
        const len9 = data22.length;
        for (let i9 = 0; i9 < len9; i9++) {
          if (
            !validate105(data22[i9], {
              instancePath: instancePath + '/questioned/' + i9,
              parentData: data22,
              parentDataProperty: i9,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = {
          instancePath: instancePath + '/questioned',
          schemaPath: '#/properties/questioned/type',
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
    if (data.faults !== undefined) {
      let data24 = data.faults;
      if (Array.isArray(data24)) {
        const len10 = data24.length;
        for (let i10 = 0; i10 < len10; i10++) {
          if (
            !validate105(data24[i10], {
              instancePath: instancePath + '/faults/' + i10,
              parentData: data24,
              parentDataProperty: i10,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err16 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.in_force !== undefined) {
      if (
        !validate105(data.in_force, {
          instancePath: instancePath + '/in_force',
          parentData: data,
          parentDataProperty: 'in_force',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate105.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_step_down !== undefined) {
      if (typeof data.may_step_down !== 'boolean') {
        const err17 = {
          instancePath: instancePath + '/may_step_down',
          schemaPath: '#/properties/may_step_down/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.plan !== undefined) {
      if (
        !validate105(data.plan, {
          instancePath: instancePath + '/plan',
          parentData: data,
          parentDataProperty: 'plan',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate105.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      let data29 = data.tell;
      if (Array.isArray(data29)) {
        const len11 = data29.length;
        for (let i11 = 0; i11 < len11; i11++) {
          if (
            !validate107(data29[i11], {
              instancePath: instancePath + '/tell/' + i11,
              parentData: data29,
              parentDataProperty: i11,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate107.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/tell',
          schemaPath: '#/properties/tell/type',
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
    if (data.reads !== undefined) {
      let data31 = data.reads;
      if (data31 && typeof data31 == 'object' && !Array.isArray(data31)) {
        for (const key3 in data31) {
          const _errs52 = errors;
          if (
            !validate105(key3, {
              instancePath: instancePath + '/reads',
              parentData: data31,
              parentDataProperty: 'reads',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
          var valid27 = _errs52 === errors;
          if (!valid27) {
            const err19 = {
              instancePath: instancePath + '/reads',
              schemaPath: '#/properties/reads/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err19];
            } else {
              vErrors.push(err19);
            }
            errors++;
          }
        }
        for (const key4 in data31) {
          if (
            !wrapper0.validate(data31[key4], {
              instancePath: instancePath + '/reads/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data31,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, wrapper0.validate.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err20 = {
          instancePath: instancePath + '/reads',
          schemaPath: '#/properties/reads/type',
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
  } else {
    const err21 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err21];
    } else {
      vErrors.push(err21);
    }
    errors++;
  }
  validate130.errors = vErrors;
  return errors === 0;
}
validate130.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate128(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate128.evaluated;
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
    if (data.answers === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'answers' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'case' || key0 === 'answers')) {
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
        !validate107(data.case, {
          instancePath: instancePath + '/case',
          parentData: data,
          parentDataProperty: 'case',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate107.errors);
        errors = vErrors.length;
      }
    }
    if (data.answers !== undefined) {
      if (
        !validate130(data.answers, {
          instancePath: instancePath + '/answers',
          parentData: data,
          parentDataProperty: 'answers',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate130.errors);
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
  validate128.errors = vErrors;
  return errors === 0;
}
validate128.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate104(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="edition.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate104.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.sealed === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sealed' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.name === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'name' },
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
    if (data.title === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.language === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'language' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.kit === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'kit' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.sealed_on === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sealed_on' },
      };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.digest === undefined) {
      const err7 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.logic_digest === undefined) {
      const err8 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'logic_digest' },
      };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.dictionary === undefined) {
      const err9 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'dictionary' },
      };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.ladder === undefined) {
      const err10 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ladder' },
      };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.texts === undefined) {
      const err11 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'texts' },
      };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.cases === undefined) {
      const err12 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'cases' },
      };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    if (data.outcomes === undefined) {
      const err13 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'outcomes' },
      };
      if (vErrors === null) {
        vErrors = [err13];
      } else {
        vErrors.push(err13);
      }
      errors++;
    }
    if (data.seal === undefined) {
      const err14 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'seal' },
      };
      if (vErrors === null) {
        vErrors = [err14];
      } else {
        vErrors.push(err14);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema37.properties, key0)) {
        const err15 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err15];
        } else {
          vErrors.push(err15);
        }
        errors++;
      }
    }
    if (data.sealed !== undefined) {
      let data0 = data.sealed;
      if (typeof data0 !== 'string') {
        const err16 = {
          instancePath: instancePath + '/sealed',
          schemaPath: '#/properties/sealed/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
      if (!(data0 === 'protocol' || data0 === 'ward')) {
        const err17 = {
          instancePath: instancePath + '/sealed',
          schemaPath: '#/properties/sealed/enum',
          keyword: 'enum',
          params: { allowedValues: schema37.properties.sealed.enum },
        };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.name !== undefined) {
      if (
        !validate105(data.name, {
          instancePath: instancePath + '/name',
          parentData: data,
          parentDataProperty: 'name',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate105.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data2 = data.edition;
      if (!(typeof data2 == 'number' && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        const err18 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
      if (typeof data2 == 'number' && isFinite(data2)) {
        if (data2 > 9999 || isNaN(data2)) {
          const err19 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 9999 },
          };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (data2 < 1 || isNaN(data2)) {
          const err20 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err20];
          } else {
            vErrors.push(err20);
          }
          errors++;
        }
      }
    }
    if (data.title !== undefined) {
      if (
        !validate107(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate107.errors);
        errors = vErrors.length;
      }
    }
    if (data.language !== undefined) {
      let data4 = data.language;
      if (!(typeof data4 == 'number' && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
        const err21 = {
          instancePath: instancePath + '/language',
          schemaPath: '#/properties/language/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err21];
        } else {
          vErrors.push(err21);
        }
        errors++;
      }
      if (typeof data4 == 'number' && isFinite(data4)) {
        if (data4 > 9999 || isNaN(data4)) {
          const err22 = {
            instancePath: instancePath + '/language',
            schemaPath: '#/properties/language/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 9999 },
          };
          if (vErrors === null) {
            vErrors = [err22];
          } else {
            vErrors.push(err22);
          }
          errors++;
        }
        if (data4 < 1 || isNaN(data4)) {
          const err23 = {
            instancePath: instancePath + '/language',
            schemaPath: '#/properties/language/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err23];
          } else {
            vErrors.push(err23);
          }
          errors++;
        }
      }
    }
    if (data.kit !== undefined) {
      let data5 = data.kit;
      if (typeof data5 === 'string') {
        if (func1(data5) > 40) {
          const err24 = {
            instancePath: instancePath + '/kit',
            schemaPath: '#/properties/kit/maxLength',
            keyword: 'maxLength',
            params: { limit: 40 },
          };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
      } else {
        const err25 = {
          instancePath: instancePath + '/kit',
          schemaPath: '#/properties/kit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
    }
    if (data.sealed_on !== undefined) {
      if (
        !validate109(data.sealed_on, {
          instancePath: instancePath + '/sealed_on',
          parentData: data,
          parentDataProperty: 'sealed_on',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate109.errors);
        errors = vErrors.length;
      }
    }
    if (data.authors !== undefined) {
      let data7 = data.authors;
      if (Array.isArray(data7)) {
        if (data7.length > 50) {
          const err26 = {
            instancePath: instancePath + '/authors',
            schemaPath: '#/properties/authors/maxItems',
            keyword: 'maxItems',
            params: { limit: 50 },
          };
          if (vErrors === null) {
            vErrors = [err26];
          } else {
            vErrors.push(err26);
          }
          errors++;
        }
        if (data7.length < 1) {
          const err27 = {
            instancePath: instancePath + '/authors',
            schemaPath: '#/properties/authors/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err27];
          } else {
            vErrors.push(err27);
          }
          errors++;
        }
        const len0 = data7.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate111(data7[i0], {
              instancePath: instancePath + '/authors/' + i0,
              parentData: data7,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate111.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err28 = {
          instancePath: instancePath + '/authors',
          schemaPath: '#/properties/authors/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err28];
        } else {
          vErrors.push(err28);
        }
        errors++;
      }
    }
    if (data.approvers !== undefined) {
      if (
        !validate113(data.approvers, {
          instancePath: instancePath + '/approvers',
          parentData: data,
          parentDataProperty: 'approvers',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate113.errors);
        errors = vErrors.length;
      }
    }
    if (data.digest !== undefined) {
      if (
        !validate113(data.digest, {
          instancePath: instancePath + '/digest',
          parentData: data,
          parentDataProperty: 'digest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate113.errors);
        errors = vErrors.length;
      }
    }
    if (data.logic_digest !== undefined) {
      if (
        !validate113(data.logic_digest, {
          instancePath: instancePath + '/logic_digest',
          parentData: data,
          parentDataProperty: 'logic_digest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate113.errors);
        errors = vErrors.length;
      }
    }
    if (data.review_by !== undefined) {
      if (
        !validate109(data.review_by, {
          instancePath: instancePath + '/review_by',
          parentData: data,
          parentDataProperty: 'review_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate109.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_with !== undefined) {
      let data13 = data.reads_with;
      if (Array.isArray(data13)) {
        const len1 = data13.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate118(data13[i1], {
              instancePath: instancePath + '/reads_with/' + i1,
              parentData: data13,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate118.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err29 = {
          instancePath: instancePath + '/reads_with',
          schemaPath: '#/properties/reads_with/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err29];
        } else {
          vErrors.push(err29);
        }
        errors++;
      }
    }
    if (data.dictionary !== undefined) {
      if (
        !validate53(data.dictionary, {
          instancePath: instancePath + '/dictionary',
          parentData: data,
          parentDataProperty: 'dictionary',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate53.errors);
        errors = vErrors.length;
      }
    }
    if (data.ladder !== undefined) {
      if (
        !validate123(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate123.errors);
        errors = vErrors.length;
      }
    }
    if (data.texts !== undefined) {
      let data17 = data.texts;
      if (data17 && typeof data17 == 'object' && !Array.isArray(data17)) {
        if (Object.keys(data17).length > 200) {
          const err30 = {
            instancePath: instancePath + '/texts',
            schemaPath: '#/properties/texts/maxProperties',
            keyword: 'maxProperties',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err30];
          } else {
            vErrors.push(err30);
          }
          errors++;
        }
        if (Object.keys(data17).length < 1) {
          const err31 = {
            instancePath: instancePath + '/texts',
            schemaPath: '#/properties/texts/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err31];
          } else {
            vErrors.push(err31);
          }
          errors++;
        }
        for (const key1 in data17) {
          const _errs27 = errors;
          if (
            !validate105(key1, {
              instancePath: instancePath + '/texts',
              parentData: data17,
              parentDataProperty: 'texts',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate105.errors);
            errors = vErrors.length;
          }
          var valid5 = _errs27 === errors;
          if (!valid5) {
            const err32 = {
              instancePath: instancePath + '/texts',
              schemaPath: '#/properties/texts/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err32];
            } else {
              vErrors.push(err32);
            }
            errors++;
          }
        }
        for (const key2 in data17) {
          if (
            !validate123(data17[key2], {
              instancePath: instancePath + '/texts/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data17,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate123.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err33 = {
          instancePath: instancePath + '/texts',
          schemaPath: '#/properties/texts/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err33];
        } else {
          vErrors.push(err33);
        }
        errors++;
      }
    }
    if (data.cases !== undefined) {
      if (
        !validate123(data.cases, {
          instancePath: instancePath + '/cases',
          parentData: data,
          parentDataProperty: 'cases',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate123.errors);
        errors = vErrors.length;
      }
    }
    if (data.outcomes !== undefined) {
      let data20 = data.outcomes;
      if (Array.isArray(data20)) {
        if (data20.length > 100000) {
          const err34 = {
            instancePath: instancePath + '/outcomes',
            schemaPath: '#/properties/outcomes/maxItems',
            keyword: 'maxItems',
            params: { limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err34];
          } else {
            vErrors.push(err34);
          }
          errors++;
        }
        if (data20.length < 1) {
          const err35 = {
            instancePath: instancePath + '/outcomes',
            schemaPath: '#/properties/outcomes/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err35];
          } else {
            vErrors.push(err35);
          }
          errors++;
        }
        const len2 = data20.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate128(data20[i2], {
              instancePath: instancePath + '/outcomes/' + i2,
              parentData: data20,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate128.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err36 = {
          instancePath: instancePath + '/outcomes',
          schemaPath: '#/properties/outcomes/type',
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
    if (data.seal !== undefined) {
      if (
        !validate113(data.seal, {
          instancePath: instancePath + '/seal',
          parentData: data,
          parentDataProperty: 'seal',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate113.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err37 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err37];
    } else {
      vErrors.push(err37);
    }
    errors++;
  }
  validate104.errors = vErrors;
  return errors === 0;
}
validate104.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const ladder = validate359;
const schema99 = {
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
  validate360.errors = vErrors;
  return errors === 0;
}
validate360.evaluated = { dynamicProps: false, dynamicItems: false };

function validate362(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate362.evaluated;
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
  validate362.errors = vErrors;
  return errors === 0;
}
validate362.evaluated = { dynamicProps: false, dynamicItems: false };

const schema102 = {
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
const schema103 = {
  type: 'object',
  properties: {
    who: { $ref: 'dictionary.schema.json#/$defs/text' },
    from: { $ref: '#/$defs/time_of_day' },
    to: { $ref: '#/$defs/time_of_day' },
  },
  required: ['who'],
  additionalProperties: false,
};
const schema104 = { type: 'string', pattern: '^([01][0-9]|2[0-3]):[0-5][0-9]$' };
const pattern20 = new RegExp('^([01][0-9]|2[0-3]):[0-5][0-9]$', 'u');

function validate371(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate371.evaluated;
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
  validate371.errors = vErrors;
  return errors === 0;
}
validate371.evaluated = { dynamicProps: false, dynamicItems: false };

function validate369(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate369.evaluated;
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
        !validate362(data.who, {
          instancePath: instancePath + '/who',
          parentData: data,
          parentDataProperty: 'who',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      if (
        !validate371(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate371.errors);
        errors = vErrors.length;
      }
    }
    if (data.to !== undefined) {
      if (
        !validate371(data.to, {
          instancePath: instancePath + '/to',
          parentData: data,
          parentDataProperty: 'to',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate371.errors);
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
  validate369.errors = vErrors;
  return errors === 0;
}
validate369.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate375(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate375.evaluated;
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
  validate375.errors = vErrors;
  return errors === 0;
}
validate375.evaluated = { dynamicProps: false, dynamicItems: false };

const schema106 = {
  type: 'object',
  properties: {
    after: { $ref: 'dictionary.schema.json#/$defs/duration' },
    tell: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['after', 'tell'],
  additionalProperties: false,
};

function validate378(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate378.evaluated;
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
        !validate375(data.after, {
          instancePath: instancePath + '/after',
          parentData: data,
          parentDataProperty: 'after',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      if (
        !validate362(data.tell, {
          instancePath: instancePath + '/tell',
          parentData: data,
          parentDataProperty: 'tell',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
  validate378.errors = vErrors;
  return errors === 0;
}
validate378.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema107 = {
  type: 'object',
  properties: {
    sets_in_a_row: { type: 'integer', minimum: 1, maximum: 20 },
    over: { $ref: 'dictionary.schema.json#/$defs/duration' },
    agreed_by: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['sets_in_a_row', 'over', 'agreed_by'],
  additionalProperties: false,
};

function validate382(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate382.evaluated;
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
        !validate375(data.over, {
          instancePath: instancePath + '/over',
          parentData: data,
          parentDataProperty: 'over',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.agreed_by !== undefined) {
      if (
        !validate362(data.agreed_by, {
          instancePath: instancePath + '/agreed_by',
          parentData: data,
          parentDataProperty: 'agreed_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
  validate382.errors = vErrors;
  return errors === 0;
}
validate382.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate365(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate365.evaluated;
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
        !validate360(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate360.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate362(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate362(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
            !validate369(data3[i0], {
              instancePath: instancePath + '/tell/' + i0,
              parentData: data3,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate369.errors);
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
        !validate375(data.respond, {
          instancePath: instancePath + '/respond',
          parentData: data,
          parentDataProperty: 'respond',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.reassess !== undefined) {
      if (
        !validate375(data.reassess, {
          instancePath: instancePath + '/reassess',
          parentData: data,
          parentDataProperty: 'reassess',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_no_answer !== undefined) {
      if (
        !validate378(data.if_no_answer, {
          instancePath: instancePath + '/if_no_answer',
          parentData: data,
          parentDataProperty: 'if_no_answer',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate378.errors);
        errors = vErrors.length;
      }
    }
    if (data.step_down !== undefined) {
      if (
        !validate382(data.step_down, {
          instancePath: instancePath + '/step_down',
          parentData: data,
          parentDataProperty: 'step_down',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate382.errors);
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
  validate365.errors = vErrors;
  return errors === 0;
}
validate365.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate359(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="ladder.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate359.evaluated;
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
        !validate360(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate360.errors);
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
        !validate362(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== undefined) {
      if (
        !validate362(data.about, {
          instancePath: instancePath + '/about',
          parentData: data,
          parentDataProperty: 'about',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
            !validate365(data4[i0], {
              instancePath: instancePath + '/levels/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate365.errors);
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
  validate359.errors = vErrors;
  return errors === 0;
}
validate359.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const logic = validate387;
const schema108 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'logic.schema.json',
  type: 'object',
  properties: {
    logic: { type: 'integer', const: 1 },
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1 },
    digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
    levels: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    observations: { type: 'array', items: { $ref: '#/$defs/observation' } },
    contradictions: { type: 'array', items: { $ref: '#/$defs/contradiction' } },
    reading: { type: 'array', items: { $ref: '#/$defs/step' } },
    inputs: { type: 'array', items: { $ref: '#/$defs/input' } },
    steps: { type: 'array', items: { $ref: '#/$defs/step' } },
    faults: { type: 'array', items: { $ref: '#/$defs/fault' } },
    answers: { $ref: '#/$defs/answers' },
  },
  required: [
    'logic',
    'protocol',
    'edition',
    'digest',
    'levels',
    'observations',
    'contradictions',
    'inputs',
    'steps',
    'answers',
  ],
  additionalProperties: false,
  $defs: {
    observation: {
      type: 'object',
      properties: {
        observation: { $ref: 'dictionary.schema.json#/$defs/name' },
        kind: { type: 'string', enum: ['number', 'choice', 'several', 'yes_no'] },
        unit: { type: 'string' },
        steps_per_unit: { type: 'string', pattern: '^[0-9]+(/[0-9]+)?$' },
        possible: { type: 'array', items: { $ref: '#/$defs/band' }, minItems: 1 },
        choices: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
        assumed: { type: ['integer', 'string'] },
      },
      required: ['observation', 'kind'],
      additionalProperties: false,
    },
    band: {
      type: 'object',
      properties: { age_below: { type: 'integer' }, low: { type: 'integer' }, high: { type: 'integer' } },
      required: ['low', 'high'],
      additionalProperties: false,
    },
    contradiction: {
      type: 'object',
      properties: {
        lower: { $ref: 'dictionary.schema.json#/$defs/name' },
        higher: { $ref: 'dictionary.schema.json#/$defs/name' },
        may_be_equal: { type: 'boolean' },
        scale: { type: 'integer' },
        factor: { type: 'integer' },
        shift: { type: 'integer' },
      },
      required: ['lower', 'higher', 'may_be_equal', 'scale', 'factor', 'shift'],
      additionalProperties: false,
    },
    fault: {
      type: 'object',
      properties: {
        fault: { $ref: 'dictionary.schema.json#/$defs/name' },
        is_there: { $ref: '#/$defs/expression' },
        reads_high: { type: 'object', additionalProperties: { type: 'integer', minimum: 1 } },
        reads_low: { type: 'object', additionalProperties: { type: 'integer', minimum: 1 } },
      },
      required: ['fault', 'is_there', 'reads_high', 'reads_low'],
      additionalProperties: false,
    },
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
        otherwise: { type: 'integer' },
        is: { $ref: '#/$defs/expression' },
        wide: { $ref: '#/$defs/expression' },
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

function validate388(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate388.evaluated;
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
  validate388.errors = vErrors;
  return errors === 0;
}
validate388.evaluated = { dynamicProps: false, dynamicItems: false };

const schema110 = {
  type: 'object',
  properties: {
    observation: { $ref: 'dictionary.schema.json#/$defs/name' },
    kind: { type: 'string', enum: ['number', 'choice', 'several', 'yes_no'] },
    unit: { type: 'string' },
    steps_per_unit: { type: 'string', pattern: '^[0-9]+(/[0-9]+)?$' },
    possible: { type: 'array', items: { $ref: '#/$defs/band' }, minItems: 1 },
    choices: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' } },
    assumed: { type: ['integer', 'string'] },
  },
  required: ['observation', 'kind'],
  additionalProperties: false,
};
const schema111 = {
  type: 'object',
  properties: { age_below: { type: 'integer' }, low: { type: 'integer' }, high: { type: 'integer' } },
  required: ['low', 'high'],
  additionalProperties: false,
};

function validate393(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate393.evaluated;
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
    for (const key0 in data) {
      if (!(key0 === 'age_below' || key0 === 'low' || key0 === 'high')) {
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
    if (data.age_below !== undefined) {
      let data0 = data.age_below;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
        const err3 = {
          instancePath: instancePath + '/age_below',
          schemaPath: '#/properties/age_below/type',
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
    }
    if (data.low !== undefined) {
      let data1 = data.low;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err4 = {
          instancePath: instancePath + '/low',
          schemaPath: '#/properties/low/type',
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
    }
    if (data.high !== undefined) {
      let data2 = data.high;
      if (!(typeof data2 == 'number' && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        const err5 = {
          instancePath: instancePath + '/high',
          schemaPath: '#/properties/high/type',
          keyword: 'type',
          params: { type: 'integer' },
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
  validate393.errors = vErrors;
  return errors === 0;
}
validate393.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const pattern24 = new RegExp('^[0-9]+(/[0-9]+)?$', 'u');

function validate391(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate391.evaluated;
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
      if (!(
        key0 === 'observation' ||
        key0 === 'kind' ||
        key0 === 'unit' ||
        key0 === 'steps_per_unit' ||
        key0 === 'possible' ||
        key0 === 'choices' ||
        key0 === 'assumed'
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
        !validate388(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
        errors = vErrors.length;
      }
    }
    if (data.kind !== undefined) {
      let data1 = data.kind;
      if (typeof data1 !== 'string') {
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
      if (!(data1 === 'number' || data1 === 'choice' || data1 === 'several' || data1 === 'yes_no')) {
        const err4 = {
          instancePath: instancePath + '/kind',
          schemaPath: '#/properties/kind/enum',
          keyword: 'enum',
          params: { allowedValues: schema110.properties.kind.enum },
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
      if (typeof data.unit !== 'string') {
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
    if (data.steps_per_unit !== undefined) {
      let data3 = data.steps_per_unit;
      if (typeof data3 === 'string') {
        if (!pattern24.test(data3)) {
          const err6 = {
            instancePath: instancePath + '/steps_per_unit',
            schemaPath: '#/properties/steps_per_unit/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]+(/[0-9]+)?$' },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/steps_per_unit',
          schemaPath: '#/properties/steps_per_unit/type',
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
    if (data.possible !== undefined) {
      let data4 = data.possible;
      if (Array.isArray(data4)) {
        if (data4.length < 1) {
          const err8 = {
            instancePath: instancePath + '/possible',
            schemaPath: '#/properties/possible/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
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
            !validate393(data4[i0], {
              instancePath: instancePath + '/possible/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate393.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err9 = {
          instancePath: instancePath + '/possible',
          schemaPath: '#/properties/possible/type',
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
    if (data.choices !== undefined) {
      let data6 = data.choices;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate388(data6[i1], {
              instancePath: instancePath + '/choices/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate388.errors);
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
    if (data.assumed !== undefined) {
      let data8 = data.assumed;
      if (
        !(typeof data8 == 'number' && !(data8 % 1) && !isNaN(data8) && isFinite(data8)) &&
        typeof data8 !== 'string'
      ) {
        const err11 = {
          instancePath: instancePath + '/assumed',
          schemaPath: '#/properties/assumed/type',
          keyword: 'type',
          params: { type: schema110.properties.assumed.type },
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
  validate391.errors = vErrors;
  return errors === 0;
}
validate391.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema112 = {
  type: 'object',
  properties: {
    lower: { $ref: 'dictionary.schema.json#/$defs/name' },
    higher: { $ref: 'dictionary.schema.json#/$defs/name' },
    may_be_equal: { type: 'boolean' },
    scale: { type: 'integer' },
    factor: { type: 'integer' },
    shift: { type: 'integer' },
  },
  required: ['lower', 'higher', 'may_be_equal', 'scale', 'factor', 'shift'],
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
    if (data.may_be_equal === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'may_be_equal' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.scale === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'scale' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.factor === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'factor' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.shift === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'shift' },
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
        key0 === 'lower' ||
        key0 === 'higher' ||
        key0 === 'may_be_equal' ||
        key0 === 'scale' ||
        key0 === 'factor' ||
        key0 === 'shift'
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
    if (data.lower !== undefined) {
      if (
        !validate388(data.lower, {
          instancePath: instancePath + '/lower',
          parentData: data,
          parentDataProperty: 'lower',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
        errors = vErrors.length;
      }
    }
    if (data.higher !== undefined) {
      if (
        !validate388(data.higher, {
          instancePath: instancePath + '/higher',
          parentData: data,
          parentDataProperty: 'higher',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_be_equal !== undefined) {
      if (typeof data.may_be_equal !== 'boolean') {
        const err7 = {
          instancePath: instancePath + '/may_be_equal',
          schemaPath: '#/properties/may_be_equal/type',
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
    if (data.scale !== undefined) {
      let data3 = data.scale;
      if (!(typeof data3 == 'number' && !(data3 % 1) && !isNaN(data3) && isFinite(data3))) {
        const err8 = {
          instancePath: instancePath + '/scale',
          schemaPath: '#/properties/scale/type',
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
    }
    if (data.factor !== undefined) {
      let data4 = data.factor;
      if (!(typeof data4 == 'number' && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
        const err9 = {
          instancePath: instancePath + '/factor',
          schemaPath: '#/properties/factor/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.shift !== undefined) {
      let data5 = data.shift;
      if (!(typeof data5 == 'number' && !(data5 % 1) && !isNaN(data5) && isFinite(data5))) {
        const err10 = {
          instancePath: instancePath + '/shift',
          schemaPath: '#/properties/shift/type',
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
  validate397.errors = vErrors;
  return errors === 0;
}
validate397.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema113 = {
  type: 'object',
  properties: { step: { type: 'string' }, is: { $ref: '#/$defs/expression' } },
  required: ['step', 'is'],
  additionalProperties: false,
};
const schema114 = {
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
const schema115 = { type: 'array', items: { $ref: '#/$defs/expression' }, minItems: 1 };
const wrapper1 = { validate: validate402 };

function validate403(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate403.evaluated;
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
    const err1 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'array' } };
    if (vErrors === null) {
      vErrors = [err1];
    } else {
      vErrors.push(err1);
    }
    errors++;
  }
  validate403.errors = vErrors;
  return errors === 0;
}
validate403.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate402(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate402.evaluated;
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
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema114.type } };
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
      if (!func5.call(schema114.properties, key0)) {
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
        !validate403(data['+'], {
          instancePath: instancePath + '/+',
          parentData: data,
          parentDataProperty: '+',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data['-'] !== undefined) {
      if (
        !validate403(data['-'], {
          instancePath: instancePath + '/-',
          parentData: data,
          parentDataProperty: '-',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data['*'] !== undefined) {
      if (
        !validate403(data['*'], {
          instancePath: instancePath + '/*',
          parentData: data,
          parentDataProperty: '*',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data.min !== undefined) {
      if (
        !validate403(data.min, {
          instancePath: instancePath + '/min',
          parentData: data,
          parentDataProperty: 'min',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data.max !== undefined) {
      if (
        !validate403(data.max, {
          instancePath: instancePath + '/max',
          parentData: data,
          parentDataProperty: 'max',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data['<'] !== undefined) {
      if (
        !validate403(data['<'], {
          instancePath: instancePath + '/<',
          parentData: data,
          parentDataProperty: '<',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data['<='] !== undefined) {
      if (
        !validate403(data['<='], {
          instancePath: instancePath + '/<=',
          parentData: data,
          parentDataProperty: '<=',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data.and !== undefined) {
      if (
        !validate403(data.and, {
          instancePath: instancePath + '/and',
          parentData: data,
          parentDataProperty: 'and',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data.or !== undefined) {
      if (
        !validate403(data.or, {
          instancePath: instancePath + '/or',
          parentData: data,
          parentDataProperty: 'or',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data['!'] !== undefined) {
      if (
        !validate403(data['!'], {
          instancePath: instancePath + '/!',
          parentData: data,
          parentDataProperty: '!',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
    if (data.if !== undefined) {
      if (
        !validate403(data.if, {
          instancePath: instancePath + '/if',
          parentData: data,
          parentDataProperty: 'if',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate403.errors);
        errors = vErrors.length;
      }
    }
  }
  validate402.errors = vErrors;
  return errors === 0;
}
validate402.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

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
        !validate402(data.is, {
          instancePath: instancePath + '/is',
          parentData: data,
          parentDataProperty: 'is',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
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
  validate401.errors = vErrors;
  return errors === 0;
}
validate401.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema116 = {
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
    otherwise: { type: 'integer' },
    is: { $ref: '#/$defs/expression' },
    wide: { $ref: '#/$defs/expression' },
  },
  required: ['input', 'of', 'name', 'part'],
  additionalProperties: false,
};

function validate417(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate417.evaluated;
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
      if (!func5.call(schema116.properties, key0)) {
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
          params: { allowedValues: schema116.properties.of.enum },
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
        !validate388(data.name, {
          instancePath: instancePath + '/name',
          parentData: data,
          parentDataProperty: 'name',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
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
          params: { allowedValues: schema116.properties.part.enum },
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
        !validate388(data.choice, {
          instancePath: instancePath + '/choice',
          parentData: data,
          parentDataProperty: 'choice',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
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
        if (!pattern24.test(data6)) {
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
    if (data.otherwise !== undefined) {
      let data7 = data.otherwise;
      if (!(typeof data7 == 'number' && !(data7 % 1) && !isNaN(data7) && isFinite(data7))) {
        const err13 = {
          instancePath: instancePath + '/otherwise',
          schemaPath: '#/properties/otherwise/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.is !== undefined) {
      if (
        !validate402(data.is, {
          instancePath: instancePath + '/is',
          parentData: data,
          parentDataProperty: 'is',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.wide !== undefined) {
      if (
        !validate402(data.wide, {
          instancePath: instancePath + '/wide',
          parentData: data,
          parentDataProperty: 'wide',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
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
  validate417.errors = vErrors;
  return errors === 0;
}
validate417.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema117 = {
  type: 'object',
  properties: {
    fault: { $ref: 'dictionary.schema.json#/$defs/name' },
    is_there: { $ref: '#/$defs/expression' },
    reads_high: { type: 'object', additionalProperties: { type: 'integer', minimum: 1 } },
    reads_low: { type: 'object', additionalProperties: { type: 'integer', minimum: 1 } },
  },
  required: ['fault', 'is_there', 'reads_high', 'reads_low'],
  additionalProperties: false,
};

function validate424(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate424.evaluated;
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
    if (data.is_there === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'is_there' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.reads_high === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'reads_high' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.reads_low === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'reads_low' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'fault' || key0 === 'is_there' || key0 === 'reads_high' || key0 === 'reads_low')) {
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
        !validate388(data.fault, {
          instancePath: instancePath + '/fault',
          parentData: data,
          parentDataProperty: 'fault',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
        errors = vErrors.length;
      }
    }
    if (data.is_there !== undefined) {
      if (
        !validate402(data.is_there, {
          instancePath: instancePath + '/is_there',
          parentData: data,
          parentDataProperty: 'is_there',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_high !== undefined) {
      let data2 = data.reads_high;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key1 in data2) {
          let data3 = data2[key1];
          if (!(typeof data3 == 'number' && !(data3 % 1) && !isNaN(data3) && isFinite(data3))) {
            const err5 = {
              instancePath: instancePath + '/reads_high/' + key1.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/reads_high/additionalProperties/type',
              keyword: 'type',
              params: { type: 'integer' },
            };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
          if (typeof data3 == 'number' && isFinite(data3)) {
            if (data3 < 1 || isNaN(data3)) {
              const err6 = {
                instancePath: instancePath + '/reads_high/' + key1.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath: '#/properties/reads_high/additionalProperties/minimum',
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
      } else {
        const err7 = {
          instancePath: instancePath + '/reads_high',
          schemaPath: '#/properties/reads_high/type',
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
    if (data.reads_low !== undefined) {
      let data4 = data.reads_low;
      if (data4 && typeof data4 == 'object' && !Array.isArray(data4)) {
        for (const key2 in data4) {
          let data5 = data4[key2];
          if (!(typeof data5 == 'number' && !(data5 % 1) && !isNaN(data5) && isFinite(data5))) {
            const err8 = {
              instancePath: instancePath + '/reads_low/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/reads_low/additionalProperties/type',
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
          if (typeof data5 == 'number' && isFinite(data5)) {
            if (data5 < 1 || isNaN(data5)) {
              const err9 = {
                instancePath: instancePath + '/reads_low/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath: '#/properties/reads_low/additionalProperties/minimum',
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
      } else {
        const err10 = {
          instancePath: instancePath + '/reads_low',
          schemaPath: '#/properties/reads_low/type',
          keyword: 'type',
          params: { type: 'object' },
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
  validate424.errors = vErrors;
  return errors === 0;
}
validate424.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema118 = {
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
const schema119 = {
  type: 'object',
  properties: { certain: { $ref: '#/$defs/expression' }, possible: { $ref: '#/$defs/expression' } },
  required: ['certain', 'possible'],
  additionalProperties: false,
};

function validate429(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate429.evaluated;
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
        !validate402(data.certain, {
          instancePath: instancePath + '/certain',
          parentData: data,
          parentDataProperty: 'certain',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.possible !== undefined) {
      if (
        !validate402(data.possible, {
          instancePath: instancePath + '/possible',
          parentData: data,
          parentDataProperty: 'possible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
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
  validate429.errors = vErrors;
  return errors === 0;
}
validate429.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema120 = {
  type: 'object',
  properties: {
    raised: { $ref: '#/$defs/expression' },
    could: { $ref: '#/$defs/expression' },
    floor: { $ref: '#/$defs/expression' },
  },
  required: ['raised', 'could', 'floor'],
  additionalProperties: false,
};

function validate433(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate433.evaluated;
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
        !validate402(data.raised, {
          instancePath: instancePath + '/raised',
          parentData: data,
          parentDataProperty: 'raised',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.could !== undefined) {
      if (
        !validate402(data.could, {
          instancePath: instancePath + '/could',
          parentData: data,
          parentDataProperty: 'could',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.floor !== undefined) {
      if (
        !validate402(data.floor, {
          instancePath: instancePath + '/floor',
          parentData: data,
          parentDataProperty: 'floor',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
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
  validate433.errors = vErrors;
  return errors === 0;
}
validate433.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema121 = {
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

function validate438(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate438.evaluated;
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
        !validate402(data.certain, {
          instancePath: instancePath + '/certain',
          parentData: data,
          parentDataProperty: 'certain',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.possible !== undefined) {
      if (
        !validate402(data.possible, {
          instancePath: instancePath + '/possible',
          parentData: data,
          parentDataProperty: 'possible',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.counts !== undefined) {
      if (
        !validate402(data.counts, {
          instancePath: instancePath + '/counts',
          parentData: data,
          parentDataProperty: 'counts',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.could !== undefined) {
      if (
        !validate402(data.could, {
          instancePath: instancePath + '/could',
          parentData: data,
          parentDataProperty: 'could',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained !== undefined) {
      if (
        !validate429(data.explained, {
          instancePath: instancePath + '/explained',
          parentData: data,
          parentDataProperty: 'explained',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate429.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable !== undefined) {
      if (
        !validate402(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
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
  validate438.errors = vErrors;
  return errors === 0;
}
validate438.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema122 = {
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
const pattern26 = new RegExp('^[0-9]+$', 'u');

function validate446(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate446.evaluated;
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
        !validate402(data.low, {
          instancePath: instancePath + '/low',
          parentData: data,
          parentDataProperty: 'low',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.high !== undefined) {
      if (
        !validate402(data.high, {
          instancePath: instancePath + '/high',
          parentData: data,
          parentDataProperty: 'high',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.scale !== undefined) {
      let data2 = data.scale;
      if (typeof data2 === 'string') {
        if (!pattern26.test(data2)) {
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
        !validate402(data.bottom_low, {
          instancePath: instancePath + '/bottom_low',
          parentData: data,
          parentDataProperty: 'bottom_low',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.bottom_high !== undefined) {
      if (
        !validate402(data.bottom_high, {
          instancePath: instancePath + '/bottom_high',
          parentData: data,
          parentDataProperty: 'bottom_high',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.bottom_scale !== undefined) {
      let data5 = data.bottom_scale;
      if (typeof data5 === 'string') {
        if (!pattern26.test(data5)) {
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
        !validate402(data.sure, {
          instancePath: instancePath + '/sure',
          parentData: data,
          parentDataProperty: 'sure',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
        errors = vErrors.length;
      }
    }
    if (data.maybe !== undefined) {
      if (
        !validate402(data.maybe, {
          instancePath: instancePath + '/maybe',
          parentData: data,
          parentDataProperty: 'maybe',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate402.errors);
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
  validate446.errors = vErrors;
  return errors === 0;
}
validate446.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate428(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate428.evaluated;
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
        !validate429(data.applies, {
          instancePath: instancePath + '/applies',
          parentData: data,
          parentDataProperty: 'applies',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate429.errors);
        errors = vErrors.length;
      }
    }
    if (data.levels !== undefined) {
      if (
        !validate433(data.levels, {
          instancePath: instancePath + '/levels',
          parentData: data,
          parentDataProperty: 'levels',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate433.errors);
        errors = vErrors.length;
      }
    }
    if (data.rules !== undefined) {
      let data2 = data.rules;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key1 in data2) {
          if (
            !validate438(data2[key1], {
              instancePath: instancePath + '/rules/' + key1.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate438.errors);
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
            !validate446(data4[key2], {
              instancePath: instancePath + '/measures/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data4,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate446.errors);
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
  validate428.errors = vErrors;
  return errors === 0;
}
validate428.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate387(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="logic.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate387.evaluated;
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
    if (data.levels === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'levels' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.observations === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'observations' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.contradictions === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'contradictions' },
      };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.inputs === undefined) {
      const err7 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'inputs' },
      };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.steps === undefined) {
      const err8 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'steps' },
      };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.answers === undefined) {
      const err9 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'answers' },
      };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema108.properties, key0)) {
        const err10 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err10];
        } else {
          vErrors.push(err10);
        }
        errors++;
      }
    }
    if (data.logic !== undefined) {
      let data0 = data.logic;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
        const err11 = {
          instancePath: instancePath + '/logic',
          schemaPath: '#/properties/logic/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
      if (1 !== data0) {
        const err12 = {
          instancePath: instancePath + '/logic',
          schemaPath: '#/properties/logic/const',
          keyword: 'const',
          params: { allowedValue: 1 },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.protocol !== undefined) {
      if (
        !validate388(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate388.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data2 = data.edition;
      if (!(typeof data2 == 'number' && !(data2 % 1) && !isNaN(data2) && isFinite(data2))) {
        const err13 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
      if (typeof data2 == 'number' && isFinite(data2)) {
        if (data2 < 1 || isNaN(data2)) {
          const err14 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
      }
    }
    if (data.digest !== undefined) {
      let data3 = data.digest;
      if (typeof data3 === 'string') {
        if (!pattern10.test(data3)) {
          const err15 = {
            instancePath: instancePath + '/digest',
            schemaPath: '#/properties/digest/pattern',
            keyword: 'pattern',
            params: { pattern: '^sha256:[0-9a-f]{64}$' },
          };
          if (vErrors === null) {
            vErrors = [err15];
          } else {
            vErrors.push(err15);
          }
          errors++;
        }
      } else {
        const err16 = {
          instancePath: instancePath + '/digest',
          schemaPath: '#/properties/digest/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.levels !== undefined) {
      let data4 = data.levels;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate388(data4[i0], {
              instancePath: instancePath + '/levels/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate388.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err17 = {
          instancePath: instancePath + '/levels',
          schemaPath: '#/properties/levels/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.observations !== undefined) {
      let data6 = data.observations;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate391(data6[i1], {
              instancePath: instancePath + '/observations/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate391.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/observations',
          schemaPath: '#/properties/observations/type',
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
    if (data.contradictions !== undefined) {
      let data8 = data.contradictions;
      if (Array.isArray(data8)) {
        const len2 = data8.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate397(data8[i2], {
              instancePath: instancePath + '/contradictions/' + i2,
              parentData: data8,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate397.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err19 = {
          instancePath: instancePath + '/contradictions',
          schemaPath: '#/properties/contradictions/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.reading !== undefined) {
      let data10 = data.reading;
      if (Array.isArray(data10)) {
        const len3 = data10.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate401(data10[i3], {
              instancePath: instancePath + '/reading/' + i3,
              parentData: data10,
              parentDataProperty: i3,
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
          instancePath: instancePath + '/reading',
          schemaPath: '#/properties/reading/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.inputs !== undefined) {
      let data12 = data.inputs;
      if (Array.isArray(data12)) {
        const len4 = data12.length;
        for (let i4 = 0; i4 < len4; i4++) {
          if (
            !validate417(data12[i4], {
              instancePath: instancePath + '/inputs/' + i4,
              parentData: data12,
              parentDataProperty: i4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate417.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err21 = {
          instancePath: instancePath + '/inputs',
          schemaPath: '#/properties/inputs/type',
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
    if (data.steps !== undefined) {
      let data14 = data.steps;
      if (Array.isArray(data14)) {
        const len5 = data14.length;
        for (let i5 = 0; i5 < len5; i5++) {
          if (
            !validate401(data14[i5], {
              instancePath: instancePath + '/steps/' + i5,
              parentData: data14,
              parentDataProperty: i5,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate401.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err22 = {
          instancePath: instancePath + '/steps',
          schemaPath: '#/properties/steps/type',
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
    if (data.faults !== undefined) {
      let data16 = data.faults;
      if (Array.isArray(data16)) {
        const len6 = data16.length;
        for (let i6 = 0; i6 < len6; i6++) {
          if (
            !validate424(data16[i6], {
              instancePath: instancePath + '/faults/' + i6,
              parentData: data16,
              parentDataProperty: i6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate424.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err23 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err23];
        } else {
          vErrors.push(err23);
        }
        errors++;
      }
    }
    if (data.answers !== undefined) {
      if (
        !validate428(data.answers, {
          instancePath: instancePath + '/answers',
          parentData: data,
          parentDataProperty: 'answers',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate428.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err24 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err24];
    } else {
      vErrors.push(err24);
    }
    errors++;
  }
  validate387.errors = vErrors;
  return errors === 0;
}
validate387.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const outcome = validate131;
const schema47 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'outcome.schema.json',
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
    based_on: { type: 'array', items: { $ref: '#/$defs/parent' }, minItems: 1, maxItems: 2 },
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
    in_force: { $ref: '#/$defs/in_force' },
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
        from: { $ref: '#/$defs/origin' },
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
    origin: {
      type: 'object',
      properties: {
        protocol: { $ref: '#/$defs/name' },
        edition: { type: 'integer', minimum: 1, maximum: 100000 },
      },
      required: ['protocol', 'edition'],
      additionalProperties: false,
    },
    parent: {
      type: 'object',
      properties: {
        protocol: { $ref: '#/$defs/name' },
        edition: { type: 'integer', minimum: 1, maximum: 100000 },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
        limits: { type: 'array', items: { $ref: '#/$defs/other_value' } },
        withdrawn: { type: 'array', items: { $ref: '#/$defs/withdrawn' } },
      },
      required: ['protocol', 'edition', 'title', 'digest', 'limits', 'withdrawn'],
      additionalProperties: false,
    },
    other_value: {
      type: 'object',
      properties: {
        limit: { $ref: '#/$defs/name' },
        value: { type: 'number' },
        instead_of: { type: 'number' },
        unit: { $ref: '#/$defs/unit' },
        because: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      required: ['limit', 'value', 'instead_of', 'because'],
      additionalProperties: false,
    },
    withdrawn: {
      type: 'object',
      properties: {
        rule: { $ref: '#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        because: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      required: ['rule', 'title', 'because'],
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
    in_force: {
      type: 'object',
      properties: {
        level: { $ref: '#/$defs/name' },
        since: { type: 'string' },
        last_at: { type: 'string' },
        sets_below: { type: 'integer' },
        sets_asked: { type: 'integer' },
        minutes: { type: 'integer' },
        minutes_asked: { type: 'integer' },
        agreed_by: { $ref: 'dictionary.schema.json#/$defs/text' },
        may_step_down: { type: 'boolean' },
      },
      required: ['level', 'since', 'last_at', 'sets_below', 'minutes', 'may_step_down'],
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

function validate132(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate132.evaluated;
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
  validate132.errors = vErrors;
  return errors === 0;
}
validate132.evaluated = { dynamicProps: false, dynamicItems: false };

function validate134(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate134.evaluated;
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
  validate134.errors = vErrors;
  return errors === 0;
}
validate134.evaluated = { dynamicProps: false, dynamicItems: false };

const schema50 = {
  type: 'object',
  properties: {
    protocol: { $ref: '#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    digest: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' },
    limits: { type: 'array', items: { $ref: '#/$defs/other_value' } },
    withdrawn: { type: 'array', items: { $ref: '#/$defs/withdrawn' } },
  },
  required: ['protocol', 'edition', 'title', 'digest', 'limits', 'withdrawn'],
  additionalProperties: false,
};
const schema52 = {
  type: 'object',
  properties: {
    limit: { $ref: '#/$defs/name' },
    value: { type: 'number' },
    instead_of: { type: 'number' },
    unit: { $ref: '#/$defs/unit' },
    because: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['limit', 'value', 'instead_of', 'because'],
  additionalProperties: false,
};

function validate140(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate140.evaluated;
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
    if (data.instead_of === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'instead_of' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.because === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'because' },
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
        key0 === 'limit' ||
        key0 === 'value' ||
        key0 === 'instead_of' ||
        key0 === 'unit' ||
        key0 === 'because'
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
    if (data.limit !== undefined) {
      if (
        !validate137(data.limit, {
          instancePath: instancePath + '/limit',
          parentData: data,
          parentDataProperty: 'limit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.value !== undefined) {
      let data1 = data.value;
      if (!(typeof data1 == 'number' && isFinite(data1))) {
        const err5 = {
          instancePath: instancePath + '/value',
          schemaPath: '#/properties/value/type',
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
    if (data.instead_of !== undefined) {
      let data2 = data.instead_of;
      if (!(typeof data2 == 'number' && isFinite(data2))) {
        const err6 = {
          instancePath: instancePath + '/instead_of',
          schemaPath: '#/properties/instead_of/type',
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate134(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
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
  validate140.errors = vErrors;
  return errors === 0;
}
validate140.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema54 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    because: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['rule', 'title', 'because'],
  additionalProperties: false,
};

function validate146(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate146.evaluated;
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
      if (!(key0 === 'rule' || key0 === 'title' || key0 === 'because')) {
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
        !validate137(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate134(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
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
  validate146.errors = vErrors;
  return errors === 0;
}
validate146.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

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
    if (data.limits === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'limits' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.withdrawn === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'withdrawn' },
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
        key0 === 'protocol' ||
        key0 === 'edition' ||
        key0 === 'title' ||
        key0 === 'digest' ||
        key0 === 'limits' ||
        key0 === 'withdrawn'
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
    if (data.protocol !== undefined) {
      if (
        !validate137(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.digest !== undefined) {
      let data3 = data.digest;
      if (typeof data3 === 'string') {
        if (!pattern10.test(data3)) {
          const err10 = {
            instancePath: instancePath + '/digest',
            schemaPath: '#/properties/digest/pattern',
            keyword: 'pattern',
            params: { pattern: '^sha256:[0-9a-f]{64}$' },
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
          instancePath: instancePath + '/digest',
          schemaPath: '#/properties/digest/type',
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
    if (data.limits !== undefined) {
      let data4 = data.limits;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate140(data4[i0], {
              instancePath: instancePath + '/limits/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate140.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.withdrawn !== undefined) {
      let data6 = data.withdrawn;
      if (Array.isArray(data6)) {
        const len1 = data6.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate146(data6[i1], {
              instancePath: instancePath + '/withdrawn/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate146.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err13 = {
          instancePath: instancePath + '/withdrawn',
          schemaPath: '#/properties/withdrawn/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
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
  validate136.errors = vErrors;
  return errors === 0;
}
validate136.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema55 = { type: 'array', items: { $ref: '#/$defs/sentence' } };
const schema56 = { type: 'string', minLength: 1 };

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
  validate153.errors = vErrors;
  return errors === 0;
}
validate153.evaluated = { dynamicProps: false, dynamicItems: false };

function validate152(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate152.evaluated;
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
        !validate153(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
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
  validate152.errors = vErrors;
  return errors === 0;
}
validate152.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate157(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate157.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!(data && typeof data == 'object' && !Array.isArray(data)) && data !== null) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema57.type } };
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
          params: { type: schema57.properties.at_least.type },
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
        !validate137(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate157.errors = vErrors;
  return errors === 0;
}
validate157.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema58 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    from: { $ref: '#/$defs/origin' },
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
const schema59 = {
  type: 'object',
  properties: {
    protocol: { $ref: '#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
  },
  required: ['protocol', 'edition'],
  additionalProperties: false,
};

function validate163(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate163.evaluated;
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
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'edition')) {
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
        !validate137(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
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
        if (data1 > 100000 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
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
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate163.errors = vErrors;
  return errors === 0;
}
validate163.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema61 = {
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

function validate172(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate172.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
        errors = vErrors.length;
      }
    }
    if (data.choices !== undefined) {
      if (
        !validate169(data.choices, {
          instancePath: instancePath + '/choices',
          parentData: data,
          parentDataProperty: 'choices',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
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
          params: { allowedValues: schema61.properties.state.enum },
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
  validate172.errors = vErrors;
  return errors === 0;
}
validate172.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate160(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate160.evaluated;
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
      if (!func5.call(schema58.properties, key0)) {
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
        !validate137(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      if (
        !validate163(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate163.errors);
        errors = vErrors.length;
      }
    }
    if (data.state !== undefined) {
      let data3 = data.state;
      if (typeof data3 !== 'string') {
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
      if (!(data3 === 'met' || data3 === 'not_met' || data3 === 'undecided')) {
        const err5 = {
          instancePath: instancePath + '/state',
          schemaPath: '#/properties/state/enum',
          keyword: 'enum',
          params: { allowedValues: schema58.properties.state.enum },
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
        !validate137(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.lowered_from !== undefined) {
      if (
        !validate137(data.lowered_from, {
          instancePath: instancePath + '/lowered_from',
          parentData: data,
          parentDataProperty: 'lowered_from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.counts !== undefined) {
      let data6 = data.counts;
      if (typeof data6 !== 'boolean') {
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
      if (true !== data6) {
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
        !validate152(data.decided_by, {
          instancePath: instancePath + '/decided_by',
          parentData: data,
          parentDataProperty: 'decided_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.waits_for !== undefined) {
      if (
        !validate169(data.waits_for, {
          instancePath: instancePath + '/waits_for',
          parentData: data,
          parentDataProperty: 'waits_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
        errors = vErrors.length;
      }
    }
    if (data.decided_if !== undefined) {
      let data9 = data.decided_if;
      if (Array.isArray(data9)) {
        const len0 = data9.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate172(data9[i0], {
              instancePath: instancePath + '/decided_if/' + i0,
              parentData: data9,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate172.errors);
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
        !validate152(data.no_value, {
          instancePath: instancePath + '/no_value',
          parentData: data,
          parentDataProperty: 'no_value',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate153(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be_explained_by !== undefined) {
      if (
        !validate153(data.could_be_explained_by, {
          instancePath: instancePath + '/could_be_explained_by',
          parentData: data,
          parentDataProperty: 'could_be_explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
        errors = vErrors.length;
      }
    }
    if (data.taken_back_by !== undefined) {
      if (
        !validate153(data.taken_back_by, {
          instancePath: instancePath + '/taken_back_by',
          parentData: data,
          parentDataProperty: 'taken_back_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be_taken_back_by !== undefined) {
      if (
        !validate153(data.could_be_taken_back_by, {
          instancePath: instancePath + '/could_be_taken_back_by',
          parentData: data,
          parentDataProperty: 'could_be_taken_back_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable !== undefined) {
      if (
        !validate152(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
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
  validate160.errors = vErrors;
  return errors === 0;
}
validate160.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate185(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate185.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!func5.call(schema62.properties, key0)) {
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
        !validate186(data.exact, {
          instancePath: instancePath + '/exact',
          parentData: data,
          parentDataProperty: 'exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate186.errors);
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
        !validate186(data.low_exact, {
          instancePath: instancePath + '/low_exact',
          parentData: data,
          parentDataProperty: 'low_exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate186.errors);
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
        !validate186(data.high_exact, {
          instancePath: instancePath + '/high_exact',
          parentData: data,
          parentDataProperty: 'high_exact',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate186.errors);
        errors = vErrors.length;
      }
    }
    if (data.unit !== undefined) {
      if (
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
        !validate169(data.waits_for, {
          instancePath: instancePath + '/waits_for',
          parentData: data,
          parentDataProperty: 'waits_for',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
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
  validate185.errors = vErrors;
  return errors === 0;
}
validate185.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema64 = {
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
        !validate137(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate137(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate134(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate134(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate153(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask !== undefined) {
      if (
        !validate152(data.ask, {
          instancePath: instancePath + '/ask',
          parentData: data,
          parentDataProperty: 'ask',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      if (
        !validate152(data.do, {
          instancePath: instancePath + '/do',
          parentData: data,
          parentDataProperty: 'do',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
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
  validate193.errors = vErrors;
  return errors === 0;
}
validate193.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema65 = {
  type: 'object',
  properties: { observation: { $ref: '#/$defs/name' }, because: { type: 'string' } },
  required: ['observation'],
  additionalProperties: false,
};

function validate206(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate206.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate206.errors = vErrors;
  return errors === 0;
}
validate206.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema66 = {
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

function validate211(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate211.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
          params: { type: schema66.properties.value.type },
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
            !validate137(data2[i0], {
              instancePath: instancePath + '/value/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate137.errors);
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
  validate211.errors = vErrors;
  return errors === 0;
}
validate211.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema67 = {
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
const schema68 = {
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

function validate221(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate221.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
  validate221.errors = vErrors;
  return errors === 0;
}
validate221.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema69 = {
  type: 'object',
  properties: {
    rule: { $ref: '#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    level: { $ref: '#/$defs/name' },
  },
  required: ['rule', 'title'],
  additionalProperties: false,
};

function validate225(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate225.evaluated;
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
        !validate137(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate137(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate225.errors = vErrors;
  return errors === 0;
}
validate225.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate216(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate216.evaluated;
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
        !validate137(data.fault, {
          instancePath: instancePath + '/fault',
          parentData: data,
          parentDataProperty: 'fault',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate134(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      if (
        !validate152(data.do, {
          instancePath: instancePath + '/do',
          parentData: data,
          parentDataProperty: 'do',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.readings !== undefined) {
      let data4 = data.readings;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate221(data4[i0], {
              instancePath: instancePath + '/readings/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate221.errors);
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
            !validate225(data6[i1], {
              instancePath: instancePath + '/changes/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate225.errors);
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
  validate216.errors = vErrors;
  return errors === 0;
}
validate216.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema70 = {
  type: 'object',
  properties: {
    level: { $ref: '#/$defs/name' },
    since: { type: 'string' },
    last_at: { type: 'string' },
    sets_below: { type: 'integer' },
    sets_asked: { type: 'integer' },
    minutes: { type: 'integer' },
    minutes_asked: { type: 'integer' },
    agreed_by: { $ref: 'dictionary.schema.json#/$defs/text' },
    may_step_down: { type: 'boolean' },
  },
  required: ['level', 'since', 'last_at', 'sets_below', 'minutes', 'may_step_down'],
  additionalProperties: false,
};

function validate231(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate231.evaluated;
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
    if (data.since === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'since' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.last_at === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'last_at' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.sets_below === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sets_below' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.minutes === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'minutes' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.may_step_down === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'may_step_down' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema70.properties, key0)) {
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
    if (data.level !== undefined) {
      if (
        !validate137(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.since !== undefined) {
      if (typeof data.since !== 'string') {
        const err7 = {
          instancePath: instancePath + '/since',
          schemaPath: '#/properties/since/type',
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
    if (data.last_at !== undefined) {
      if (typeof data.last_at !== 'string') {
        const err8 = {
          instancePath: instancePath + '/last_at',
          schemaPath: '#/properties/last_at/type',
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
    }
    if (data.sets_below !== undefined) {
      let data3 = data.sets_below;
      if (!(typeof data3 == 'number' && !(data3 % 1) && !isNaN(data3) && isFinite(data3))) {
        const err9 = {
          instancePath: instancePath + '/sets_below',
          schemaPath: '#/properties/sets_below/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.sets_asked !== undefined) {
      let data4 = data.sets_asked;
      if (!(typeof data4 == 'number' && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
        const err10 = {
          instancePath: instancePath + '/sets_asked',
          schemaPath: '#/properties/sets_asked/type',
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
    }
    if (data.minutes !== undefined) {
      let data5 = data.minutes;
      if (!(typeof data5 == 'number' && !(data5 % 1) && !isNaN(data5) && isFinite(data5))) {
        const err11 = {
          instancePath: instancePath + '/minutes',
          schemaPath: '#/properties/minutes/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.minutes_asked !== undefined) {
      let data6 = data.minutes_asked;
      if (!(typeof data6 == 'number' && !(data6 % 1) && !isNaN(data6) && isFinite(data6))) {
        const err12 = {
          instancePath: instancePath + '/minutes_asked',
          schemaPath: '#/properties/minutes_asked/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.agreed_by !== undefined) {
      if (
        !validate134(data.agreed_by, {
          instancePath: instancePath + '/agreed_by',
          parentData: data,
          parentDataProperty: 'agreed_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_step_down !== undefined) {
      if (typeof data.may_step_down !== 'boolean') {
        const err13 = {
          instancePath: instancePath + '/may_step_down',
          schemaPath: '#/properties/may_step_down/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
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
  validate231.errors = vErrors;
  return errors === 0;
}
validate231.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema71 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    value: { type: ['number', 'string'] },
    unit: { $ref: '#/$defs/unit' },
  },
  required: ['observation', 'value'],
  additionalProperties: false,
};

function validate235(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate235.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
          params: { type: schema71.properties.value.type },
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
  validate235.errors = vErrors;
  return errors === 0;
}
validate235.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema72 = {
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
        !validate137(data.limit, {
          instancePath: instancePath + '/limit',
          parentData: data,
          parentDataProperty: 'limit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
  validate239.errors = vErrors;
  return errors === 0;
}
validate239.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema73 = {
  type: 'object',
  properties: { observation: { $ref: '#/$defs/name' }, given: { type: 'string' }, as: { type: 'string' } },
  required: ['observation', 'given', 'as'],
  additionalProperties: false,
};

function validate243(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate243.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate243.errors = vErrors;
  return errors === 0;
}
validate243.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema74 = {
  type: 'object',
  properties: {
    observation: { $ref: '#/$defs/name' },
    given: { type: 'string' },
    because: { $ref: '#/$defs/sentence' },
  },
  required: ['observation', 'given', 'because'],
  additionalProperties: false,
};

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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate153(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
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
  validate246.errors = vErrors;
  return errors === 0;
}
validate246.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate131(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="outcome.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate131.evaluated;
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
      if (!func5.call(schema47.properties, key0)) {
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
        !validate132(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate132.errors);
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
        !validate134(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.digest !== undefined) {
      let data3 = data.digest;
      if (typeof data3 === 'string') {
        if (!pattern10.test(data3)) {
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
    if (data.based_on !== undefined) {
      let data4 = data.based_on;
      if (Array.isArray(data4)) {
        if (data4.length > 2) {
          const err30 = {
            instancePath: instancePath + '/based_on',
            schemaPath: '#/properties/based_on/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          if (vErrors === null) {
            vErrors = [err30];
          } else {
            vErrors.push(err30);
          }
          errors++;
        }
        if (data4.length < 1) {
          const err31 = {
            instancePath: instancePath + '/based_on',
            schemaPath: '#/properties/based_on/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err31];
          } else {
            vErrors.push(err31);
          }
          errors++;
        }
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate136(data4[i0], {
              instancePath: instancePath + '/based_on/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate136.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err32 = {
          instancePath: instancePath + '/based_on',
          schemaPath: '#/properties/based_on/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err32];
        } else {
          vErrors.push(err32);
        }
        errors++;
      }
    }
    if (data.at !== undefined) {
      let data6 = data.at;
      if (typeof data6 !== 'string' && data6 !== null) {
        const err33 = {
          instancePath: instancePath + '/at',
          schemaPath: '#/properties/at/type',
          keyword: 'type',
          params: { type: schema47.properties.at.type },
        };
        if (vErrors === null) {
          vErrors = [err33];
        } else {
          vErrors.push(err33);
        }
        errors++;
      }
    }
    if (data.applies !== undefined) {
      let data7 = data.applies;
      if (typeof data7 !== 'string') {
        const err34 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err34];
        } else {
          vErrors.push(err34);
        }
        errors++;
      }
      if (!(data7 === 'yes' || data7 === 'no' || data7 === 'unsure')) {
        const err35 = {
          instancePath: instancePath + '/applies',
          schemaPath: '#/properties/applies/enum',
          keyword: 'enum',
          params: { allowedValues: schema47.properties.applies.enum },
        };
        if (vErrors === null) {
          vErrors = [err35];
        } else {
          vErrors.push(err35);
        }
        errors++;
      }
    }
    if (data.applies_because !== undefined) {
      if (
        !validate152(data.applies_because, {
          instancePath: instancePath + '/applies_because',
          parentData: data,
          parentDataProperty: 'applies_because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate152.errors);
        errors = vErrors.length;
      }
    }
    if (data.otherwise !== undefined) {
      if (
        !validate134(data.otherwise, {
          instancePath: instancePath + '/otherwise',
          parentData: data,
          parentDataProperty: 'otherwise',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate157(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate157.errors);
        errors = vErrors.length;
      }
    }
    if (data.rules !== undefined) {
      let data11 = data.rules;
      if (Array.isArray(data11)) {
        const len1 = data11.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate160(data11[i1], {
              instancePath: instancePath + '/rules/' + i1,
              parentData: data11,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate160.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err36 = {
          instancePath: instancePath + '/rules',
          schemaPath: '#/properties/rules/type',
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
    if (data.measures !== undefined) {
      let data13 = data.measures;
      if (data13 && typeof data13 == 'object' && !Array.isArray(data13)) {
        for (const key1 in data13) {
          const _errs23 = errors;
          if (
            !validate132(key1, {
              instancePath: instancePath + '/measures',
              parentData: data13,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate132.errors);
            errors = vErrors.length;
          }
          var valid5 = _errs23 === errors;
          if (!valid5) {
            const err37 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err37];
            } else {
              vErrors.push(err37);
            }
            errors++;
          }
        }
        for (const key2 in data13) {
          if (
            !validate185(data13[key2], {
              instancePath: instancePath + '/measures/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data13,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate185.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err38 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err38];
        } else {
          vErrors.push(err38);
        }
        errors++;
      }
    }
    if (data.advice !== undefined) {
      let data15 = data.advice;
      if (Array.isArray(data15)) {
        const len2 = data15.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate193(data15[i2], {
              instancePath: instancePath + '/advice/' + i2,
              parentData: data15,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate193.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err39 = {
          instancePath: instancePath + '/advice',
          schemaPath: '#/properties/advice/type',
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
    if (data.ask_first !== undefined) {
      if (
        !validate169(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
        errors = vErrors.length;
      }
    }
    if (data.take_first !== undefined) {
      if (
        !validate169(data.take_first, {
          instancePath: instancePath + '/take_first',
          parentData: data,
          parentDataProperty: 'take_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
        errors = vErrors.length;
      }
    }
    if (data.missing !== undefined) {
      if (
        !validate169(data.missing, {
          instancePath: instancePath + '/missing',
          parentData: data,
          parentDataProperty: 'missing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
        errors = vErrors.length;
      }
    }
    if (data.unobtainable !== undefined) {
      let data20 = data.unobtainable;
      if (Array.isArray(data20)) {
        const len3 = data20.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate206(data20[i3], {
              instancePath: instancePath + '/unobtainable/' + i3,
              parentData: data20,
              parentDataProperty: i3,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate206.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err40 = {
          instancePath: instancePath + '/unobtainable',
          schemaPath: '#/properties/unobtainable/type',
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
    if (data.declined !== undefined) {
      let data22 = data.declined;
      if (Array.isArray(data22)) {
        const len4 = data22.length;
        for (let i4 = 0; i4 < len4; i4++) {
          if (
            !validate206(data22[i4], {
              instancePath: instancePath + '/declined/' + i4,
              parentData: data22,
              parentDataProperty: i4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate206.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err41 = {
          instancePath: instancePath + '/declined',
          schemaPath: '#/properties/declined/type',
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
    if (data.would_tell_more !== undefined) {
      if (
        !validate169(data.would_tell_more, {
          instancePath: instancePath + '/would_tell_more',
          parentData: data,
          parentDataProperty: 'would_tell_more',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
        errors = vErrors.length;
      }
    }
    if (data.stands_in !== undefined) {
      let data25 = data.stands_in;
      if (Array.isArray(data25)) {
        const len5 = data25.length;
        for (let i5 = 0; i5 < len5; i5++) {
          if (
            !validate211(data25[i5], {
              instancePath: instancePath + '/stands_in/' + i5,
              parentData: data25,
              parentDataProperty: i5,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate211.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err42 = {
          instancePath: instancePath + '/stands_in',
          schemaPath: '#/properties/stands_in/type',
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
    if (data.faults !== undefined) {
      let data27 = data.faults;
      if (Array.isArray(data27)) {
        const len6 = data27.length;
        for (let i6 = 0; i6 < len6; i6++) {
          if (
            !validate216(data27[i6], {
              instancePath: instancePath + '/faults/' + i6,
              parentData: data27,
              parentDataProperty: i6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate216.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err43 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
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
    if (data.in_force !== undefined) {
      if (
        !validate231(data.in_force, {
          instancePath: instancePath + '/in_force',
          parentData: data,
          parentDataProperty: 'in_force',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate231.errors);
        errors = vErrors.length;
      }
    }
    if (data.assumed !== undefined) {
      let data30 = data.assumed;
      if (Array.isArray(data30)) {
        const len7 = data30.length;
        for (let i7 = 0; i7 < len7; i7++) {
          if (
            !validate235(data30[i7], {
              instancePath: instancePath + '/assumed/' + i7,
              parentData: data30,
              parentDataProperty: i7,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate235.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err44 = {
          instancePath: instancePath + '/assumed',
          schemaPath: '#/properties/assumed/type',
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
    if (data.limits !== undefined) {
      let data32 = data.limits;
      if (Array.isArray(data32)) {
        const len8 = data32.length;
        for (let i8 = 0; i8 < len8; i8++) {
          if (
            !validate239(data32[i8], {
              instancePath: instancePath + '/limits/' + i8,
              parentData: data32,
              parentDataProperty: i8,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate239.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err45 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
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
    if (data.taken !== undefined) {
      let data34 = data.taken;
      if (Array.isArray(data34)) {
        const len9 = data34.length;
        for (let i9 = 0; i9 < len9; i9++) {
          if (
            !validate243(data34[i9], {
              instancePath: instancePath + '/taken/' + i9,
              parentData: data34,
              parentDataProperty: i9,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate243.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err46 = {
          instancePath: instancePath + '/taken',
          schemaPath: '#/properties/taken/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err46];
        } else {
          vErrors.push(err46);
        }
        errors++;
      }
    }
    if (data.refused !== undefined) {
      let data36 = data.refused;
      if (Array.isArray(data36)) {
        const len10 = data36.length;
        for (let i10 = 0; i10 < len10; i10++) {
          if (
            !validate246(data36[i10], {
              instancePath: instancePath + '/refused/' + i10,
              parentData: data36,
              parentDataProperty: i10,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate246.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err47 = {
          instancePath: instancePath + '/refused',
          schemaPath: '#/properties/refused/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err47];
        } else {
          vErrors.push(err47);
        }
        errors++;
      }
    }
    if (data.questioned !== undefined) {
      let data38 = data.questioned;
      if (Array.isArray(data38)) {
        const len11 = data38.length;
        for (let i11 = 0; i11 < len11; i11++) {
          if (
            !validate246(data38[i11], {
              instancePath: instancePath + '/questioned/' + i11,
              parentData: data38,
              parentDataProperty: i11,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate246.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err48 = {
          instancePath: instancePath + '/questioned',
          schemaPath: '#/properties/questioned/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err48];
        } else {
          vErrors.push(err48);
        }
        errors++;
      }
    }
    if (data.unused !== undefined) {
      if (
        !validate169(data.unused, {
          instancePath: instancePath + '/unused',
          parentData: data,
          parentDataProperty: 'unused',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate169.errors);
        errors = vErrors.length;
      }
    }
    if (data.caution !== undefined) {
      if (
        !validate134(data.caution, {
          instancePath: instancePath + '/caution',
          parentData: data,
          parentDataProperty: 'caution',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err49 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err49];
    } else {
      vErrors.push(err49);
    }
    errors++;
  }
  validate131.errors = vErrors;
  return errors === 0;
}
validate131.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const protocol = validate455;
const schema123 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'protocol.schema.json',
  type: 'object',
  properties: {
    protocol: { $ref: '#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: '#/$defs/text' },
    about: { $ref: '#/$defs/text' },
    based_on: { $ref: '#/$defs/based_on' },
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
  required: ['protocol', 'edition', 'title', 'ladder'],
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
    based_on: {
      type: 'object',
      properties: {
        protocol: { $ref: '#/$defs/name' },
        edition: { type: 'integer', minimum: 1, maximum: 100000 },
        limits: {
          type: 'object',
          propertyNames: { $ref: '#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/other_value' },
          minProperties: 1,
        },
        withdraws: { type: 'array', items: { $ref: '#/$defs/withdrawal' }, minItems: 1, maxItems: 1000 },
      },
      required: ['protocol', 'edition'],
      additionalProperties: false,
    },
    other_value: {
      type: 'object',
      properties: {
        value: { $ref: '#/$defs/quantity' },
        because: { $ref: '#/$defs/text' },
        source: { $ref: '#/$defs/names' },
      },
      required: ['value', 'because'],
      additionalProperties: false,
    },
    withdrawal: {
      type: 'object',
      properties: { rule: { $ref: '#/$defs/name' }, because: { $ref: '#/$defs/text' } },
      required: ['rule', 'because'],
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
        excludes: { $ref: '#/$defs/names' },
      },
      required: ['id', 'text'],
      additionalProperties: false,
    },
  },
};

function validate456(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate456.evaluated;
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
  validate456.errors = vErrors;
  return errors === 0;
}
validate456.evaluated = { dynamicProps: false, dynamicItems: false };

function validate458(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate458.evaluated;
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
  validate458.errors = vErrors;
  return errors === 0;
}
validate458.evaluated = { dynamicProps: false, dynamicItems: false };

const schema126 = {
  type: 'object',
  properties: {
    protocol: { $ref: '#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    limits: {
      type: 'object',
      propertyNames: { $ref: '#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/other_value' },
      minProperties: 1,
    },
    withdraws: { type: 'array', items: { $ref: '#/$defs/withdrawal' }, minItems: 1, maxItems: 1000 },
  },
  required: ['protocol', 'edition'],
  additionalProperties: false,
};
const schema127 = {
  type: 'object',
  properties: {
    value: { $ref: '#/$defs/quantity' },
    because: { $ref: '#/$defs/text' },
    source: { $ref: '#/$defs/names' },
  },
  required: ['value', 'because'],
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
  validate465.errors = vErrors;
  return errors === 0;
}
validate465.evaluated = { dynamicProps: false, dynamicItems: false };

const schema129 = { type: 'array', items: { $ref: '#/$defs/name' }, maxItems: 200 };

function validate468(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate468.evaluated;
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
        !validate456(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
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
  validate468.errors = vErrors;
  return errors === 0;
}
validate468.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate464(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate464.evaluated;
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
    if (data.because === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'because' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'value' || key0 === 'because' || key0 === 'source')) {
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
      if (
        !validate465(data.value, {
          instancePath: instancePath + '/value',
          parentData: data,
          parentDataProperty: 'value',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate458(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate468(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
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
  validate464.errors = vErrors;
  return errors === 0;
}
validate464.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema130 = {
  type: 'object',
  properties: { rule: { $ref: '#/$defs/name' }, because: { $ref: '#/$defs/text' } },
  required: ['rule', 'because'],
  additionalProperties: false,
};

function validate472(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate472.evaluated;
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
    if (data.because === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'because' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'rule' || key0 === 'because')) {
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
        !validate456(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate458(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
  validate472.errors = vErrors;
  return errors === 0;
}
validate472.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

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
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'edition' || key0 === 'limits' || key0 === 'withdraws')) {
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
        !validate456(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
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
        if (data1 > 100000 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
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
    if (data.limits !== undefined) {
      let data2 = data.limits;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        if (Object.keys(data2).length < 1) {
          const err6 = {
            instancePath: instancePath + '/limits',
            schemaPath: '#/properties/limits/minProperties',
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
        for (const key1 in data2) {
          const _errs7 = errors;
          if (
            !validate456(key1, {
              instancePath: instancePath + '/limits',
              parentData: data2,
              parentDataProperty: 'limits',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs7 === errors;
          if (!valid1) {
            const err7 = {
              instancePath: instancePath + '/limits',
              schemaPath: '#/properties/limits/propertyNames',
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
        for (const key2 in data2) {
          if (
            !validate464(data2[key2], {
              instancePath: instancePath + '/limits/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate464.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
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
    if (data.withdraws !== undefined) {
      let data4 = data.withdraws;
      if (Array.isArray(data4)) {
        if (data4.length > 1000) {
          const err9 = {
            instancePath: instancePath + '/withdraws',
            schemaPath: '#/properties/withdraws/maxItems',
            keyword: 'maxItems',
            params: { limit: 1000 },
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
            instancePath: instancePath + '/withdraws',
            schemaPath: '#/properties/withdraws/minItems',
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
            !validate472(data4[i0], {
              instancePath: instancePath + '/withdraws/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate472.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err11 = {
          instancePath: instancePath + '/withdraws',
          schemaPath: '#/properties/withdraws/type',
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
  validate461.errors = vErrors;
  return errors === 0;
}
validate461.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema131 = {
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
const schema132 = {
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

function validate486(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate486.evaluated;
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
  validate486.errors = vErrors;
  return errors === 0;
}
validate486.evaluated = { dynamicProps: false, dynamicItems: false };

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
      if (!func5.call(schema132.properties, key0)) {
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
        !validate465(data.below, {
          instancePath: instancePath + '/below',
          parentData: data,
          parentDataProperty: 'below',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
        errors = vErrors.length;
      }
    }
    if (data.above !== undefined) {
      if (
        !validate465(data.above, {
          instancePath: instancePath + '/above',
          parentData: data,
          parentDataProperty: 'above',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_most !== undefined) {
      if (
        !validate465(data.at_most, {
          instancePath: instancePath + '/at_most',
          parentData: data,
          parentDataProperty: 'at_most',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_least !== undefined) {
      if (
        !validate465(data.at_least, {
          instancePath: instancePath + '/at_least',
          parentData: data,
          parentDataProperty: 'at_least',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
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
            !validate465(data4[i0], {
              instancePath: instancePath + '/between/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate465.errors);
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
          params: { type: schema132.properties.is.type },
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
        !validate468(data.one_of, {
          instancePath: instancePath + '/one_of',
          parentData: data,
          parentDataProperty: 'one_of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
        errors = vErrors.length;
      }
    }
    if (data.known !== undefined) {
      if (
        !validate486(data.known, {
          instancePath: instancePath + '/known',
          parentData: data,
          parentDataProperty: 'known',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate486.errors);
        errors = vErrors.length;
      }
    }
    if (data.unobtainable !== undefined) {
      if (
        !validate486(data.unobtainable, {
          instancePath: instancePath + '/unobtainable',
          parentData: data,
          parentDataProperty: 'unobtainable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate486.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate458(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
  validate479.errors = vErrors;
  return errors === 0;
}
validate479.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema134 = { type: 'array', items: { $ref: '#/$defs/condition' }, minItems: 1, maxItems: 200 };
const wrapper2 = { validate: validate478 };

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
        !wrapper2.validate(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, wrapper2.validate.errors);
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
  validate491.errors = vErrors;
  return errors === 0;
}
validate491.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

const schema135 = {
  type: 'object',
  properties: { count: { type: 'integer', minimum: 1, maximum: 200 }, of: { $ref: '#/$defs/conditions' } },
  required: ['count', 'of'],
  additionalProperties: false,
};

function validate495(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate495.evaluated;
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
        !validate491(data.of, {
          instancePath: instancePath + '/of',
          parentData: data,
          parentDataProperty: 'of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
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
  validate495.errors = vErrors;
  return errors === 0;
}
validate495.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate478(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate478.evaluated;
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
          !validate479(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate479.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.all !== undefined) {
      if (
        !validate491(data.all, {
          instancePath: instancePath + '/all',
          parentData: data,
          parentDataProperty: 'all',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.any !== undefined) {
      if (
        !validate491(data.any, {
          instancePath: instancePath + '/any',
          parentData: data,
          parentDataProperty: 'any',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.none !== undefined) {
      if (
        !validate491(data.none, {
          instancePath: instancePath + '/none',
          parentData: data,
          parentDataProperty: 'none',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_least_of !== undefined) {
      if (
        !validate495(data.at_least_of, {
          instancePath: instancePath + '/at_least_of',
          parentData: data,
          parentDataProperty: 'at_least_of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate495.errors);
        errors = vErrors.length;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate456(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
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
  validate478.errors = vErrors;
  return errors === 0;
}
validate478.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate503(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate503.evaluated;
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
  validate503.errors = vErrors;
  return errors === 0;
}
validate503.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema137 = {
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

function validate511(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate511.evaluated;
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
  validate511.errors = vErrors;
  return errors === 0;
}
validate511.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate507(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate507.evaluated;
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
        !validate468(data.needs, {
          instancePath: instancePath + '/needs',
          parentData: data,
          parentDataProperty: 'needs',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
        errors = vErrors.length;
      }
    }
    if (data.helps !== undefined) {
      if (
        !validate468(data.helps, {
          instancePath: instancePath + '/helps',
          parentData: data,
          parentDataProperty: 'helps',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
        errors = vErrors.length;
      }
    }
    if (data.declares !== undefined) {
      let data2 = data.declares;
      if (data2 && typeof data2 == 'object' && !Array.isArray(data2)) {
        for (const key1 in data2) {
          const _errs6 = errors;
          if (
            !validate456(key1, {
              instancePath: instancePath + '/declares',
              parentData: data2,
              parentDataProperty: 'declares',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
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
            !validate511(data2[key2], {
              instancePath: instancePath + '/declares/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data2,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate511.errors);
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
  validate507.errors = vErrors;
  return errors === 0;
}
validate507.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema139 = {
  type: 'object',
  properties: { set_by: { $ref: '#/$defs/text' }, if_not_stated: { type: ['number', 'string', 'boolean'] } },
  additionalProperties: false,
};

function validate528(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate528.evaluated;
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
        !validate458(data.set_by, {
          instancePath: instancePath + '/set_by',
          parentData: data,
          parentDataProperty: 'set_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
          params: { type: schema139.properties.if_not_stated.type },
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
  validate528.errors = vErrors;
  return errors === 0;
}
validate528.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema140 = {
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

function validate532(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate532.evaluated;
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
        !validate465(data.value, {
          instancePath: instancePath + '/value',
          parentData: data,
          parentDataProperty: 'value',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
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
            !validate465(data2[i0], {
              instancePath: instancePath + '/between/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate465.errors);
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
        !validate458(data.set_by, {
          instancePath: instancePath + '/set_by',
          parentData: data,
          parentDataProperty: 'set_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate458(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate468(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
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
  validate532.errors = vErrors;
  return errors === 0;
}
validate532.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema141 = {
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
const schema142 = {
  type: 'object',
  propertyNames: { $ref: '#/$defs/name' },
  additionalProperties: { $ref: '#/$defs/quantity' },
  minProperties: 1,
  maxProperties: 20,
};

function validate543(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate543.evaluated;
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
        !validate456(key0, { instancePath, parentData: data, parentDataProperty, rootData, dynamicAnchors })
      ) {
        vErrors = joined(vErrors, validate456.errors);
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
        !validate465(data[key1], {
          instancePath: instancePath + '/' + key1.replace(/~/g, '~0').replace(/\//g, '~1'),
          parentData: data,
          parentDataProperty: key1,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
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
  validate543.errors = vErrors;
  return errors === 0;
}
validate543.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema143 = {
  type: 'object',
  properties: {
    id: { $ref: '#/$defs/name' },
    text: { $ref: '#/$defs/text' },
    under: { $ref: '#/$defs/text' },
    excludes: { $ref: '#/$defs/names' },
  },
  required: ['id', 'text'],
  additionalProperties: false,
};

function validate549(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate549.evaluated;
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
      if (!(key0 === 'id' || key0 === 'text' || key0 === 'under' || key0 === 'excludes')) {
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
        !validate456(data.id, {
          instancePath: instancePath + '/id',
          parentData: data,
          parentDataProperty: 'id',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.text !== undefined) {
      if (
        !validate458(data.text, {
          instancePath: instancePath + '/text',
          parentData: data,
          parentDataProperty: 'text',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.under !== undefined) {
      if (
        !validate458(data.under, {
          instancePath: instancePath + '/under',
          parentData: data,
          parentDataProperty: 'under',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.excludes !== undefined) {
      if (
        !validate468(data.excludes, {
          instancePath: instancePath + '/excludes',
          parentData: data,
          parentDataProperty: 'excludes',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
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
  validate549.errors = vErrors;
  return errors === 0;
}
validate549.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate539(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate539.evaluated;
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
        !validate456(data.fault, {
          instancePath: instancePath + '/fault',
          parentData: data,
          parentDataProperty: 'fault',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate458(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate478(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_high !== undefined) {
      if (
        !validate543(data.reads_high, {
          instancePath: instancePath + '/reads_high',
          parentData: data,
          parentDataProperty: 'reads_high',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate543.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads_low !== undefined) {
      if (
        !validate543(data.reads_low, {
          instancePath: instancePath + '/reads_low',
          parentData: data,
          parentDataProperty: 'reads_low',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate543.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate458(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
            !validate549(data6[i0], {
              instancePath: instancePath + '/do/' + i0,
              parentData: data6,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate549.errors);
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
        !validate468(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
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
  validate539.errors = vErrors;
  return errors === 0;
}
validate539.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema144 = {
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
const schema145 = {
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

function validate562(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate562.evaluated;
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
        !validate456(data.of, {
          instancePath: instancePath + '/of',
          parentData: data,
          parentDataProperty: 'of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
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
                !validate465(data2[i1], {
                  instancePath: instancePath + '/points/' + i0 + '/' + i1,
                  parentData: data2,
                  parentDataProperty: i1,
                  rootData,
                  dynamicAnchors,
                })
              ) {
                vErrors = joined(vErrors, validate465.errors);
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
          params: { allowedValues: schema145.properties.beyond.enum },
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
  validate562.errors = vErrors;
  return errors === 0;
}
validate562.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema146 = {
  type: ['array', 'object'],
  items: { $ref: '#/$defs/band' },
  additionalProperties: { type: 'integer', minimum: -1000, maximum: 1000 },
  minItems: 1,
  maxItems: 100,
};
const schema147 = {
  type: 'object',
  properties: {
    at_most: { $ref: '#/$defs/quantity' },
    below: { $ref: '#/$defs/quantity' },
    points: { type: 'integer', minimum: -1000, maximum: 1000 },
  },
  required: ['points'],
  additionalProperties: false,
};

function validate568(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate568.evaluated;
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
        !validate465(data.at_most, {
          instancePath: instancePath + '/at_most',
          parentData: data,
          parentDataProperty: 'at_most',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
        errors = vErrors.length;
      }
    }
    if (data.below !== undefined) {
      if (
        !validate465(data.below, {
          instancePath: instancePath + '/below',
          parentData: data,
          parentDataProperty: 'below',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
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
  validate568.errors = vErrors;
  return errors === 0;
}
validate568.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate567(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate567.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!data || typeof data != 'object') {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema146.type } };
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
        !validate568(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate568.errors);
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
  validate567.errors = vErrors;
  return errors === 0;
}
validate567.evaluated = { props: true, items: true, dynamicProps: false, dynamicItems: false };

const schema148 = {
  type: 'object',
  properties: { when: { $ref: '#/$defs/condition' }, use: { $ref: '#/$defs/quantity' } },
  required: ['use'],
  additionalProperties: false,
};

function validate573(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate573.evaluated;
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
        !validate478(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.use !== undefined) {
      if (
        !validate465(data.use, {
          instancePath: instancePath + '/use',
          parentData: data,
          parentDataProperty: 'use',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate465.errors);
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
  validate573.errors = vErrors;
  return errors === 0;
}
validate573.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate587(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate587.evaluated;
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
  validate587.errors = vErrors;
  return errors === 0;
}
validate587.evaluated = { dynamicProps: false, dynamicItems: false };

function validate558(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate558.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!func5.call(schema144.properties, key0)) {
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
        !validate458(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.meaning !== undefined) {
      if (
        !validate458(data.meaning, {
          instancePath: instancePath + '/meaning',
          parentData: data,
          parentDataProperty: 'meaning',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
        !validate468(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
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
          params: { type: schema144.properties.formula.type },
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
        !validate562(data.curve, {
          instancePath: instancePath + '/curve',
          parentData: data,
          parentDataProperty: 'curve',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate562.errors);
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
            !validate456(key1, {
              instancePath: instancePath + '/score',
              parentData: data6,
              parentDataProperty: 'score',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
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
            !validate567(data6[key2], {
              instancePath: instancePath + '/score/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data6,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate567.errors);
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
            !validate573(data8[i0], {
              instancePath: instancePath + '/choose/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate573.errors);
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
        !validate468(data.first_known, {
          instancePath: instancePath + '/first_known',
          parentData: data,
          parentDataProperty: 'first_known',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
        errors = vErrors.length;
      }
    }
    if (data.highest !== undefined) {
      if (
        !validate456(data.highest, {
          instancePath: instancePath + '/highest',
          parentData: data,
          parentDataProperty: 'highest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.lowest !== undefined) {
      if (
        !validate456(data.lowest, {
          instancePath: instancePath + '/lowest',
          parentData: data,
          parentDataProperty: 'lowest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.average !== undefined) {
      if (
        !validate456(data.average, {
          instancePath: instancePath + '/average',
          parentData: data,
          parentDataProperty: 'average',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.earliest !== undefined) {
      if (
        !validate456(data.earliest, {
          instancePath: instancePath + '/earliest',
          parentData: data,
          parentDataProperty: 'earliest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.latest !== undefined) {
      if (
        !validate456(data.latest, {
          instancePath: instancePath + '/latest',
          parentData: data,
          parentDataProperty: 'latest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.change !== undefined) {
      if (
        !validate456(data.change, {
          instancePath: instancePath + '/change',
          parentData: data,
          parentDataProperty: 'change',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.count !== undefined) {
      if (
        !validate456(data.count, {
          instancePath: instancePath + '/count',
          parentData: data,
          parentDataProperty: 'count',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.minutes_since !== undefined) {
      if (
        !validate456(data.minutes_since, {
          instancePath: instancePath + '/minutes_since',
          parentData: data,
          parentDataProperty: 'minutes_since',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.held !== undefined) {
      if (
        !validate478(data.held, {
          instancePath: instancePath + '/held',
          parentData: data,
          parentDataProperty: 'held',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.over !== undefined) {
      if (
        !validate587(data.over, {
          instancePath: instancePath + '/over',
          parentData: data,
          parentDataProperty: 'over',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate587.errors);
        errors = vErrors.length;
      }
    }
    if (data.where !== undefined) {
      if (
        !validate478(data.where, {
          instancePath: instancePath + '/where',
          parentData: data,
          parentDataProperty: 'where',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
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
          params: { allowedValues: schema144.properties.present_set.enum },
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
        !validate587(data.longest_gap, {
          instancePath: instancePath + '/longest_gap',
          parentData: data,
          parentDataProperty: 'longest_gap',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate587.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable_when !== undefined) {
      if (
        !validate478(data.not_reliable_when, {
          instancePath: instancePath + '/not_reliable_when',
          parentData: data,
          parentDataProperty: 'not_reliable_when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
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
  validate558.errors = vErrors;
  return errors === 0;
}
validate558.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema150 = {
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
const schema151 = {
  type: 'object',
  properties: {
    when: { $ref: '#/$defs/condition' },
    says: { $ref: '#/$defs/text' },
    accepted: { $ref: '#/$defs/text' },
  },
  required: ['when'],
  additionalProperties: false,
};

function validate597(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate597.evaluated;
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
        !validate478(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate458(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate458(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
  validate597.errors = vErrors;
  return errors === 0;
}
validate597.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema152 = {
  type: 'object',
  properties: {
    when: { $ref: '#/$defs/condition' },
    says: { $ref: '#/$defs/text' },
    level: { $ref: '#/$defs/name' },
  },
  required: ['when', 'says'],
  additionalProperties: false,
};

function validate602(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate602.evaluated;
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
        !validate478(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate458(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate456(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
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
  validate602.errors = vErrors;
  return errors === 0;
}
validate602.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema153 = { type: 'array', items: { $ref: '#/$defs/text' }, minItems: 1, maxItems: 20 };

function validate611(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate611.evaluated;
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
        !validate458(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
  validate611.errors = vErrors;
  return errors === 0;
}
validate611.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate593(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate593.evaluated;
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
      if (!func5.call(schema150.properties, key0)) {
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
        !validate456(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate458(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.when !== undefined) {
      if (
        !validate478(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.unless !== undefined) {
      if (
        !validate597(data.unless, {
          instancePath: instancePath + '/unless',
          parentData: data,
          parentDataProperty: 'unless',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate597.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate602(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate602.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_reliable_when !== undefined) {
      if (
        !validate478(data.not_reliable_when, {
          instancePath: instancePath + '/not_reliable_when',
          parentData: data,
          parentDataProperty: 'not_reliable_when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate456(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate458(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate458(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask !== undefined) {
      if (
        !validate611(data.ask, {
          instancePath: instancePath + '/ask',
          parentData: data,
          parentDataProperty: 'ask',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate611.errors);
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
            !validate549(data10[i0], {
              instancePath: instancePath + '/do/' + i0,
              parentData: data10,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate549.errors);
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
        !validate468(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate468.errors);
        errors = vErrors.length;
      }
    }
    if (data.accepted !== undefined) {
      if (
        !validate458(data.accepted, {
          instancePath: instancePath + '/accepted',
          parentData: data,
          parentDataProperty: 'accepted',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
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
  validate593.errors = vErrors;
  return errors === 0;
}
validate593.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate455(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="protocol.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate455.evaluated;
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
    for (const key0 in data) {
      if (!func5.call(schema123.properties, key0)) {
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
    if (data.protocol !== undefined) {
      if (
        !validate456(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err5 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err5];
        } else {
          vErrors.push(err5);
        }
        errors++;
      }
      if (typeof data1 == 'number' && isFinite(data1)) {
        if (data1 > 100000 || isNaN(data1)) {
          const err6 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err7 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
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
    if (data.title !== undefined) {
      if (
        !validate458(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== undefined) {
      if (
        !validate458(data.about, {
          instancePath: instancePath + '/about',
          parentData: data,
          parentDataProperty: 'about',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.based_on !== undefined) {
      if (
        !validate461(data.based_on, {
          instancePath: instancePath + '/based_on',
          parentData: data,
          parentDataProperty: 'based_on',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate461.errors);
        errors = vErrors.length;
      }
    }
    if (data.ladder !== undefined) {
      if (
        !validate456(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
        errors = vErrors.length;
      }
    }
    if (data.applies_when !== undefined) {
      if (
        !validate478(data.applies_when, {
          instancePath: instancePath + '/applies_when',
          parentData: data,
          parentDataProperty: 'applies_when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate478.errors);
        errors = vErrors.length;
      }
    }
    if (data.otherwise !== undefined) {
      if (
        !validate458(data.otherwise, {
          instancePath: instancePath + '/otherwise',
          parentData: data,
          parentDataProperty: 'otherwise',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate458.errors);
        errors = vErrors.length;
      }
    }
    if (data.review_by !== undefined) {
      let data8 = data.review_by;
      if (typeof data8 === 'string') {
        if (!pattern9.test(data8)) {
          const err8 = {
            instancePath: instancePath + '/review_by',
            schemaPath: '#/properties/review_by/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
      } else {
        const err9 = {
          instancePath: instancePath + '/review_by',
          schemaPath: '#/properties/review_by/type',
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
    }
    if (data.owners !== undefined) {
      let data9 = data.owners;
      if (Array.isArray(data9)) {
        if (data9.length > 20) {
          const err10 = {
            instancePath: instancePath + '/owners',
            schemaPath: '#/properties/owners/maxItems',
            keyword: 'maxItems',
            params: { limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        if (data9.length < 1) {
          const err11 = {
            instancePath: instancePath + '/owners',
            schemaPath: '#/properties/owners/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
        const len0 = data9.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate458(data9[i0], {
              instancePath: instancePath + '/owners/' + i0,
              parentData: data9,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate458.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/owners',
          schemaPath: '#/properties/owners/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.sources !== undefined) {
      let data11 = data.sources;
      if (data11 && typeof data11 == 'object' && !Array.isArray(data11)) {
        for (const key1 in data11) {
          const _errs18 = errors;
          if (
            !validate456(key1, {
              instancePath: instancePath + '/sources',
              parentData: data11,
              parentDataProperty: 'sources',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs18 === errors;
          if (!valid3) {
            const err13 = {
              instancePath: instancePath + '/sources',
              schemaPath: '#/properties/sources/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err13];
            } else {
              vErrors.push(err13);
            }
            errors++;
          }
        }
        for (const key2 in data11) {
          if (
            !validate503(data11[key2], {
              instancePath: instancePath + '/sources/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data11,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate503.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err14 = {
          instancePath: instancePath + '/sources',
          schemaPath: '#/properties/sources/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err14];
        } else {
          vErrors.push(err14);
        }
        errors++;
      }
    }
    if (data.observations !== undefined) {
      if (
        !validate507(data.observations, {
          instancePath: instancePath + '/observations',
          parentData: data,
          parentDataProperty: 'observations',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate507.errors);
        errors = vErrors.length;
      }
    }
    if (data.standing !== undefined) {
      let data14 = data.standing;
      if (data14 && typeof data14 == 'object' && !Array.isArray(data14)) {
        for (const key3 in data14) {
          const _errs24 = errors;
          if (
            !validate456(key3, {
              instancePath: instancePath + '/standing',
              parentData: data14,
              parentDataProperty: 'standing',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
            errors = vErrors.length;
          }
          var valid5 = _errs24 === errors;
          if (!valid5) {
            const err15 = {
              instancePath: instancePath + '/standing',
              schemaPath: '#/properties/standing/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        }
        for (const key4 in data14) {
          if (
            !validate528(data14[key4], {
              instancePath: instancePath + '/standing/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data14,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate528.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err16 = {
          instancePath: instancePath + '/standing',
          schemaPath: '#/properties/standing/type',
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
    if (data.limits !== undefined) {
      let data16 = data.limits;
      if (data16 && typeof data16 == 'object' && !Array.isArray(data16)) {
        for (const key5 in data16) {
          const _errs29 = errors;
          if (
            !validate456(key5, {
              instancePath: instancePath + '/limits',
              parentData: data16,
              parentDataProperty: 'limits',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
            errors = vErrors.length;
          }
          var valid7 = _errs29 === errors;
          if (!valid7) {
            const err17 = {
              instancePath: instancePath + '/limits',
              schemaPath: '#/properties/limits/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key5 },
            };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
        }
        for (const key6 in data16) {
          if (
            !validate532(data16[key6], {
              instancePath: instancePath + '/limits/' + key6.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data16,
              parentDataProperty: key6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate532.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/limits',
          schemaPath: '#/properties/limits/type',
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
    if (data.faults !== undefined) {
      let data18 = data.faults;
      if (Array.isArray(data18)) {
        if (data18.length > 200) {
          const err19 = {
            instancePath: instancePath + '/faults',
            schemaPath: '#/properties/faults/maxItems',
            keyword: 'maxItems',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        const len1 = data18.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate539(data18[i1], {
              instancePath: instancePath + '/faults/' + i1,
              parentData: data18,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate539.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err20 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.measures !== undefined) {
      let data20 = data.measures;
      if (data20 && typeof data20 == 'object' && !Array.isArray(data20)) {
        for (const key7 in data20) {
          const _errs37 = errors;
          if (
            !validate456(key7, {
              instancePath: instancePath + '/measures',
              parentData: data20,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
            errors = vErrors.length;
          }
          var valid11 = _errs37 === errors;
          if (!valid11) {
            const err21 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key7 },
            };
            if (vErrors === null) {
              vErrors = [err21];
            } else {
              vErrors.push(err21);
            }
            errors++;
          }
        }
        for (const key8 in data20) {
          if (
            !validate558(data20[key8], {
              instancePath: instancePath + '/measures/' + key8.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data20,
              parentDataProperty: key8,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate558.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err22 = {
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err22];
        } else {
          vErrors.push(err22);
        }
        errors++;
      }
    }
    if (data.rules !== undefined) {
      let data22 = data.rules;
      if (Array.isArray(data22)) {
        if (data22.length > 10000) {
          const err23 = {
            instancePath: instancePath + '/rules',
            schemaPath: '#/properties/rules/maxItems',
            keyword: 'maxItems',
            params: { limit: 10000 },
          };
          if (vErrors === null) {
            vErrors = [err23];
          } else {
            vErrors.push(err23);
          }
          errors++;
        }
        const len2 = data22.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate593(data22[i2], {
              instancePath: instancePath + '/rules/' + i2,
              parentData: data22,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate593.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err24 = {
          instancePath: instancePath + '/rules',
          schemaPath: '#/properties/rules/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err24];
        } else {
          vErrors.push(err24);
        }
        errors++;
      }
    }
    if (data.exactly_one_of !== undefined) {
      let data24 = data.exactly_one_of;
      if (data24 && typeof data24 == 'object' && !Array.isArray(data24)) {
        for (const key9 in data24) {
          const _errs45 = errors;
          if (
            !validate456(key9, {
              instancePath: instancePath + '/exactly_one_of',
              parentData: data24,
              parentDataProperty: 'exactly_one_of',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate456.errors);
            errors = vErrors.length;
          }
          var valid15 = _errs45 === errors;
          if (!valid15) {
            const err25 = {
              instancePath: instancePath + '/exactly_one_of',
              schemaPath: '#/properties/exactly_one_of/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key9 },
            };
            if (vErrors === null) {
              vErrors = [err25];
            } else {
              vErrors.push(err25);
            }
            errors++;
          }
        }
        for (const key10 in data24) {
          if (
            !validate491(data24[key10], {
              instancePath:
                instancePath + '/exactly_one_of/' + key10.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data24,
              parentDataProperty: key10,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate491.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err26 = {
          instancePath: instancePath + '/exactly_one_of',
          schemaPath: '#/properties/exactly_one_of/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err26];
        } else {
          vErrors.push(err26);
        }
        errors++;
      }
    }
  } else {
    const err27 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err27];
    } else {
      vErrors.push(err27);
    }
    errors++;
  }
  validate455.errors = vErrors;
  return errors === 0;
}
validate455.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const record_entry = validate620;
const schema154 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'record_entry.schema.json',
  type: 'object',
  properties: {
    record: { $ref: 'dictionary.schema.json#/$defs/name' },
    entry: { type: 'integer', minimum: 1, maximum: 99999 },
    before: { type: ['string', 'null'], pattern: '^sha256:[0-9a-f]{64}$' },
    at: { $ref: '#/$defs/moment' },
    approvers: { $ref: '#/$defs/approvers_entry' },
    approved: { $ref: '#/$defs/approved_entry' },
    in_force: { $ref: '#/$defs/in_force_entry' },
    withdrawn: { $ref: '#/$defs/withdrawn_entry' },
    signatures: { type: 'array', items: { $ref: '#/$defs/entry_signature' }, minItems: 1, maxItems: 50 },
    digest: { $ref: 'edition.schema.json#/$defs/digest' },
  },
  required: ['record', 'entry', 'before', 'at', 'digest'],
  additionalProperties: false,
  $defs: {
    moment: { type: 'string', maxLength: 40, pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}T' },
    minute: { type: 'string', minLength: 1, maxLength: 200 },
    words: { type: 'string', minLength: 1, maxLength: 1000 },
    approvers_entry: {
      type: 'object',
      properties: {
        signing: { $ref: 'dictionary.schema.json#/$defs/yes' },
        needs: {
          type: 'array',
          items: { $ref: 'approvers.schema.json#/$defs/need' },
          minItems: 1,
          maxItems: 20,
        },
        people: {
          type: 'array',
          items: { $ref: 'approvers.schema.json#/$defs/approver' },
          minItems: 1,
          maxItems: 200,
        },
        minute: { $ref: '#/$defs/minute' },
        on: { $ref: 'edition.schema.json#/$defs/calendar_day' },
        agreed_by: {
          type: 'array',
          items: { $ref: 'edition.schema.json#/$defs/person' },
          minItems: 1,
          maxItems: 50,
        },
      },
      required: ['signing', 'needs', 'people', 'minute', 'on', 'agreed_by'],
      additionalProperties: false,
    },
    approved_entry: {
      type: 'object',
      properties: {
        edition: { type: 'integer', minimum: 1, maximum: 9999 },
        digest: { $ref: 'edition.schema.json#/$defs/digest' },
        seal: { $ref: 'edition.schema.json#/$defs/digest' },
        by: { $ref: 'edition.schema.json#/$defs/person' },
        role: { $ref: 'approvers.schema.json#/$defs/role' },
        minute: { $ref: '#/$defs/minute' },
        on: { $ref: 'edition.schema.json#/$defs/calendar_day' },
      },
      required: ['edition', 'digest', 'seal', 'by', 'role', 'minute', 'on'],
      additionalProperties: false,
    },
    in_force_entry: {
      type: 'object',
      properties: {
        edition: { type: 'integer', minimum: 1, maximum: 9999 },
        digest: { $ref: 'edition.schema.json#/$defs/digest' },
        seal: { $ref: 'edition.schema.json#/$defs/digest' },
        from: { $ref: '#/$defs/moment' },
        by: { $ref: 'edition.schema.json#/$defs/person' },
        because: { $ref: '#/$defs/words' },
      },
      required: ['edition', 'digest', 'seal', 'from', 'by', 'because'],
      additionalProperties: false,
    },
    withdrawn_entry: {
      type: 'object',
      properties: {
        from: { $ref: '#/$defs/moment' },
        by: { $ref: 'edition.schema.json#/$defs/person' },
        because: { $ref: '#/$defs/words' },
        instead: { $ref: '#/$defs/words' },
      },
      required: ['from', 'by', 'because', 'instead'],
      additionalProperties: false,
    },
    entry_signature: {
      type: 'object',
      properties: {
        by: { $ref: 'edition.schema.json#/$defs/person' },
        jws: { type: 'string', maxLength: 400, pattern: '^[A-Za-z0-9_-]+[.][.][A-Za-z0-9_-]+$' },
      },
      required: ['by', 'jws'],
      additionalProperties: false,
    },
  },
};

function validate621(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate621.evaluated;
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
  validate621.errors = vErrors;
  return errors === 0;
}
validate621.evaluated = { dynamicProps: false, dynamicItems: false };

const schema156 = { type: 'string', maxLength: 40, pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}T' };
const pattern35 = new RegExp('^[0-9]{4}-[0-9]{2}-[0-9]{2}T', 'u');

function validate623(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate623.evaluated;
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
    if (!pattern35.test(data)) {
      const err1 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}T' },
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
  validate623.errors = vErrors;
  return errors === 0;
}
validate623.evaluated = { dynamicProps: false, dynamicItems: false };

const schema157 = {
  type: 'object',
  properties: {
    signing: { $ref: 'dictionary.schema.json#/$defs/yes' },
    needs: { type: 'array', items: { $ref: 'approvers.schema.json#/$defs/need' }, minItems: 1, maxItems: 20 },
    people: {
      type: 'array',
      items: { $ref: 'approvers.schema.json#/$defs/approver' },
      minItems: 1,
      maxItems: 200,
    },
    minute: { $ref: '#/$defs/minute' },
    on: { $ref: 'edition.schema.json#/$defs/calendar_day' },
    agreed_by: {
      type: 'array',
      items: { $ref: 'edition.schema.json#/$defs/person' },
      minItems: 1,
      maxItems: 50,
    },
  },
  required: ['signing', 'needs', 'people', 'minute', 'on', 'agreed_by'],
  additionalProperties: false,
};

function validate626(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate626.evaluated;
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
  validate626.errors = vErrors;
  return errors === 0;
}
validate626.evaluated = { dynamicProps: false, dynamicItems: false };

function validate628(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate628.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.role === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'role' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.people === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'people' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'role' || key0 === 'people')) {
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
    if (data.role !== undefined) {
      if (
        !validate100(data.role, {
          instancePath: instancePath + '/role',
          parentData: data,
          parentDataProperty: 'role',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate100.errors);
        errors = vErrors.length;
      }
    }
    if (data.people !== undefined) {
      let data1 = data.people;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/people',
          schemaPath: '#/properties/people/type',
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
        if (data1 > 20 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 20 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/minimum',
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
  } else {
    const err6 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err6];
    } else {
      vErrors.push(err6);
    }
    errors++;
  }
  validate628.errors = vErrors;
  return errors === 0;
}
validate628.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate631(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate631.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.name === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'name' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.roles === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'roles' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'name' || key0 === 'roles' || key0 === 'key')) {
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
    if (data.name !== undefined) {
      if (
        !validate282(data.name, {
          instancePath: instancePath + '/name',
          parentData: data,
          parentDataProperty: 'name',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate282.errors);
        errors = vErrors.length;
      }
    }
    if (data.roles !== undefined) {
      let data1 = data.roles;
      if (Array.isArray(data1)) {
        if (data1.length > 10) {
          const err3 = {
            instancePath: instancePath + '/roles',
            schemaPath: '#/properties/roles/maxItems',
            keyword: 'maxItems',
            params: { limit: 10 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (data1.length < 1) {
          const err4 = {
            instancePath: instancePath + '/roles',
            schemaPath: '#/properties/roles/minItems',
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
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate100(data1[i0], {
              instancePath: instancePath + '/roles/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate100.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/roles',
          schemaPath: '#/properties/roles/type',
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
    if (data.key !== undefined) {
      if (
        !validate285(data.key, {
          instancePath: instancePath + '/key',
          parentData: data,
          parentDataProperty: 'key',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate285.errors);
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
  validate631.errors = vErrors;
  return errors === 0;
}
validate631.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema161 = { type: 'string', minLength: 1, maxLength: 200 };

function validate636(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate636.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 200) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 200 } };
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
  validate636.errors = vErrors;
  return errors === 0;
}
validate636.evaluated = { dynamicProps: false, dynamicItems: false };

function validate638(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate638.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (!pattern9.test(data)) {
      const err0 = {
        instancePath,
        schemaPath: '#/pattern',
        keyword: 'pattern',
        params: { pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
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
  validate638.errors = vErrors;
  return errors === 0;
}
validate638.evaluated = { dynamicProps: false, dynamicItems: false };

function validate640(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate640.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 80) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 80 } };
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
  validate640.errors = vErrors;
  return errors === 0;
}
validate640.evaluated = { dynamicProps: false, dynamicItems: false };

function validate625(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate625.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.signing === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'signing' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.needs === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'needs' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.people === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'people' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.minute === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'minute' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.on === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'on' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.agreed_by === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'agreed_by' },
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
        key0 === 'signing' ||
        key0 === 'needs' ||
        key0 === 'people' ||
        key0 === 'minute' ||
        key0 === 'on' ||
        key0 === 'agreed_by'
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
    if (data.signing !== undefined) {
      if (
        !validate626(data.signing, {
          instancePath: instancePath + '/signing',
          parentData: data,
          parentDataProperty: 'signing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate626.errors);
        errors = vErrors.length;
      }
    }
    if (data.needs !== undefined) {
      let data1 = data.needs;
      if (Array.isArray(data1)) {
        if (data1.length > 20) {
          const err7 = {
            instancePath: instancePath + '/needs',
            schemaPath: '#/properties/needs/maxItems',
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
        if (data1.length < 1) {
          const err8 = {
            instancePath: instancePath + '/needs',
            schemaPath: '#/properties/needs/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate628(data1[i0], {
              instancePath: instancePath + '/needs/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate628.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err9 = {
          instancePath: instancePath + '/needs',
          schemaPath: '#/properties/needs/type',
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
    if (data.people !== undefined) {
      let data3 = data.people;
      if (Array.isArray(data3)) {
        if (data3.length > 200) {
          const err10 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/maxItems',
            keyword: 'maxItems',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
        if (data3.length < 1) {
          const err11 = {
            instancePath: instancePath + '/people',
            schemaPath: '#/properties/people/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
        const len1 = data3.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate631(data3[i1], {
              instancePath: instancePath + '/people/' + i1,
              parentData: data3,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate631.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err12 = {
          instancePath: instancePath + '/people',
          schemaPath: '#/properties/people/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.minute !== undefined) {
      if (
        !validate636(data.minute, {
          instancePath: instancePath + '/minute',
          parentData: data,
          parentDataProperty: 'minute',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate636.errors);
        errors = vErrors.length;
      }
    }
    if (data.on !== undefined) {
      if (
        !validate638(data.on, {
          instancePath: instancePath + '/on',
          parentData: data,
          parentDataProperty: 'on',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate638.errors);
        errors = vErrors.length;
      }
    }
    if (data.agreed_by !== undefined) {
      let data7 = data.agreed_by;
      if (Array.isArray(data7)) {
        if (data7.length > 50) {
          const err13 = {
            instancePath: instancePath + '/agreed_by',
            schemaPath: '#/properties/agreed_by/maxItems',
            keyword: 'maxItems',
            params: { limit: 50 },
          };
          if (vErrors === null) {
            vErrors = [err13];
          } else {
            vErrors.push(err13);
          }
          errors++;
        }
        if (data7.length < 1) {
          const err14 = {
            instancePath: instancePath + '/agreed_by',
            schemaPath: '#/properties/agreed_by/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err14];
          } else {
            vErrors.push(err14);
          }
          errors++;
        }
        const len2 = data7.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate640(data7[i2], {
              instancePath: instancePath + '/agreed_by/' + i2,
              parentData: data7,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate640.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err15 = {
          instancePath: instancePath + '/agreed_by',
          schemaPath: '#/properties/agreed_by/type',
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
  } else {
    const err16 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err16];
    } else {
      vErrors.push(err16);
    }
    errors++;
  }
  validate625.errors = vErrors;
  return errors === 0;
}
validate625.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema164 = {
  type: 'object',
  properties: {
    edition: { type: 'integer', minimum: 1, maximum: 9999 },
    digest: { $ref: 'edition.schema.json#/$defs/digest' },
    seal: { $ref: 'edition.schema.json#/$defs/digest' },
    by: { $ref: 'edition.schema.json#/$defs/person' },
    role: { $ref: 'approvers.schema.json#/$defs/role' },
    minute: { $ref: '#/$defs/minute' },
    on: { $ref: 'edition.schema.json#/$defs/calendar_day' },
  },
  required: ['edition', 'digest', 'seal', 'by', 'role', 'minute', 'on'],
  additionalProperties: false,
};

function validate644(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate644.evaluated;
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
        params: { pattern: '^sha256:[0-9a-f]{64}$' },
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
  validate644.errors = vErrors;
  return errors === 0;
}
validate644.evaluated = { dynamicProps: false, dynamicItems: false };

function validate648(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate648.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 80) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 80 } };
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
  validate648.errors = vErrors;
  return errors === 0;
}
validate648.evaluated = { dynamicProps: false, dynamicItems: false };

function validate643(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate643.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.edition === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.digest === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.seal === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'seal' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.by === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'by' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.role === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'role' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.minute === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'minute' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.on === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'on' },
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
        key0 === 'edition' ||
        key0 === 'digest' ||
        key0 === 'seal' ||
        key0 === 'by' ||
        key0 === 'role' ||
        key0 === 'minute' ||
        key0 === 'on'
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
    if (data.edition !== undefined) {
      let data0 = data.edition;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
        const err8 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
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
      if (typeof data0 == 'number' && isFinite(data0)) {
        if (data0 > 9999 || isNaN(data0)) {
          const err9 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 9999 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (data0 < 1 || isNaN(data0)) {
          const err10 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 1 },
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
    if (data.digest !== undefined) {
      if (
        !validate644(data.digest, {
          instancePath: instancePath + '/digest',
          parentData: data,
          parentDataProperty: 'digest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate644.errors);
        errors = vErrors.length;
      }
    }
    if (data.seal !== undefined) {
      if (
        !validate644(data.seal, {
          instancePath: instancePath + '/seal',
          parentData: data,
          parentDataProperty: 'seal',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate644.errors);
        errors = vErrors.length;
      }
    }
    if (data.by !== undefined) {
      if (
        !validate640(data.by, {
          instancePath: instancePath + '/by',
          parentData: data,
          parentDataProperty: 'by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate640.errors);
        errors = vErrors.length;
      }
    }
    if (data.role !== undefined) {
      if (
        !validate648(data.role, {
          instancePath: instancePath + '/role',
          parentData: data,
          parentDataProperty: 'role',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate648.errors);
        errors = vErrors.length;
      }
    }
    if (data.minute !== undefined) {
      if (
        !validate636(data.minute, {
          instancePath: instancePath + '/minute',
          parentData: data,
          parentDataProperty: 'minute',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate636.errors);
        errors = vErrors.length;
      }
    }
    if (data.on !== undefined) {
      if (
        !validate638(data.on, {
          instancePath: instancePath + '/on',
          parentData: data,
          parentDataProperty: 'on',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate638.errors);
        errors = vErrors.length;
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
  validate643.errors = vErrors;
  return errors === 0;
}
validate643.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema167 = {
  type: 'object',
  properties: {
    edition: { type: 'integer', minimum: 1, maximum: 9999 },
    digest: { $ref: 'edition.schema.json#/$defs/digest' },
    seal: { $ref: 'edition.schema.json#/$defs/digest' },
    from: { $ref: '#/$defs/moment' },
    by: { $ref: 'edition.schema.json#/$defs/person' },
    because: { $ref: '#/$defs/words' },
  },
  required: ['edition', 'digest', 'seal', 'from', 'by', 'because'],
  additionalProperties: false,
};
const schema168 = { type: 'string', minLength: 1, maxLength: 1000 };

function validate658(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate658.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (typeof data === 'string') {
    if (func1(data) > 1000) {
      const err0 = { instancePath, schemaPath: '#/maxLength', keyword: 'maxLength', params: { limit: 1000 } };
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
  validate658.errors = vErrors;
  return errors === 0;
}
validate658.evaluated = { dynamicProps: false, dynamicItems: false };

function validate653(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate653.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.edition === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'edition' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.digest === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.seal === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'seal' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.from === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'from' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.by === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'by' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.because === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'because' },
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
        key0 === 'edition' ||
        key0 === 'digest' ||
        key0 === 'seal' ||
        key0 === 'from' ||
        key0 === 'by' ||
        key0 === 'because'
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
    if (data.edition !== undefined) {
      let data0 = data.edition;
      if (!(typeof data0 == 'number' && !(data0 % 1) && !isNaN(data0) && isFinite(data0))) {
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
      if (typeof data0 == 'number' && isFinite(data0)) {
        if (data0 > 9999 || isNaN(data0)) {
          const err8 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 9999 },
          };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
        if (data0 < 1 || isNaN(data0)) {
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
    if (data.digest !== undefined) {
      if (
        !validate644(data.digest, {
          instancePath: instancePath + '/digest',
          parentData: data,
          parentDataProperty: 'digest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate644.errors);
        errors = vErrors.length;
      }
    }
    if (data.seal !== undefined) {
      if (
        !validate644(data.seal, {
          instancePath: instancePath + '/seal',
          parentData: data,
          parentDataProperty: 'seal',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate644.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      if (
        !validate623(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate623.errors);
        errors = vErrors.length;
      }
    }
    if (data.by !== undefined) {
      if (
        !validate640(data.by, {
          instancePath: instancePath + '/by',
          parentData: data,
          parentDataProperty: 'by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate640.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate658(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate658.errors);
        errors = vErrors.length;
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
  validate653.errors = vErrors;
  return errors === 0;
}
validate653.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema169 = {
  type: 'object',
  properties: {
    from: { $ref: '#/$defs/moment' },
    by: { $ref: 'edition.schema.json#/$defs/person' },
    because: { $ref: '#/$defs/words' },
    instead: { $ref: '#/$defs/words' },
  },
  required: ['from', 'by', 'because', 'instead'],
  additionalProperties: false,
};

function validate661(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate661.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.from === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'from' },
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
    if (data.instead === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'instead' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'from' || key0 === 'by' || key0 === 'because' || key0 === 'instead')) {
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
    if (data.from !== undefined) {
      if (
        !validate623(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate623.errors);
        errors = vErrors.length;
      }
    }
    if (data.by !== undefined) {
      if (
        !validate640(data.by, {
          instancePath: instancePath + '/by',
          parentData: data,
          parentDataProperty: 'by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate640.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate658(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate658.errors);
        errors = vErrors.length;
      }
    }
    if (data.instead !== undefined) {
      if (
        !validate658(data.instead, {
          instancePath: instancePath + '/instead',
          parentData: data,
          parentDataProperty: 'instead',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate658.errors);
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
  validate661.errors = vErrors;
  return errors === 0;
}
validate661.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema170 = {
  type: 'object',
  properties: {
    by: { $ref: 'edition.schema.json#/$defs/person' },
    jws: { type: 'string', maxLength: 400, pattern: '^[A-Za-z0-9_-]+[.][.][A-Za-z0-9_-]+$' },
  },
  required: ['by', 'jws'],
  additionalProperties: false,
};
const pattern38 = new RegExp('^[A-Za-z0-9_-]+[.][.][A-Za-z0-9_-]+$', 'u');

function validate667(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate667.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.by === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'by' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.jws === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'jws' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'by' || key0 === 'jws')) {
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
    if (data.by !== undefined) {
      if (
        !validate640(data.by, {
          instancePath: instancePath + '/by',
          parentData: data,
          parentDataProperty: 'by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate640.errors);
        errors = vErrors.length;
      }
    }
    if (data.jws !== undefined) {
      let data1 = data.jws;
      if (typeof data1 === 'string') {
        if (func1(data1) > 400) {
          const err3 = {
            instancePath: instancePath + '/jws',
            schemaPath: '#/properties/jws/maxLength',
            keyword: 'maxLength',
            params: { limit: 400 },
          };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
        if (!pattern38.test(data1)) {
          const err4 = {
            instancePath: instancePath + '/jws',
            schemaPath: '#/properties/jws/pattern',
            keyword: 'pattern',
            params: { pattern: '^[A-Za-z0-9_-]+[.][.][A-Za-z0-9_-]+$' },
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
          instancePath: instancePath + '/jws',
          schemaPath: '#/properties/jws/type',
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
  validate667.errors = vErrors;
  return errors === 0;
}
validate667.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate620(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="record_entry.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate620.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.record === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'record' },
      };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.entry === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'entry' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.before === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'before' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.at === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'at' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.digest === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'digest' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema154.properties, key0)) {
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
    if (data.record !== undefined) {
      if (
        !validate621(data.record, {
          instancePath: instancePath + '/record',
          parentData: data,
          parentDataProperty: 'record',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate621.errors);
        errors = vErrors.length;
      }
    }
    if (data.entry !== undefined) {
      let data1 = data.entry;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err6 = {
          instancePath: instancePath + '/entry',
          schemaPath: '#/properties/entry/type',
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
        if (data1 > 99999 || isNaN(data1)) {
          const err7 = {
            instancePath: instancePath + '/entry',
            schemaPath: '#/properties/entry/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 99999 },
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
            instancePath: instancePath + '/entry',
            schemaPath: '#/properties/entry/minimum',
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
    if (data.before !== undefined) {
      let data2 = data.before;
      if (typeof data2 !== 'string' && data2 !== null) {
        const err9 = {
          instancePath: instancePath + '/before',
          schemaPath: '#/properties/before/type',
          keyword: 'type',
          params: { type: schema154.properties.before.type },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
      if (typeof data2 === 'string') {
        if (!pattern10.test(data2)) {
          const err10 = {
            instancePath: instancePath + '/before',
            schemaPath: '#/properties/before/pattern',
            keyword: 'pattern',
            params: { pattern: '^sha256:[0-9a-f]{64}$' },
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
    if (data.at !== undefined) {
      if (
        !validate623(data.at, {
          instancePath: instancePath + '/at',
          parentData: data,
          parentDataProperty: 'at',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate623.errors);
        errors = vErrors.length;
      }
    }
    if (data.approvers !== undefined) {
      if (
        !validate625(data.approvers, {
          instancePath: instancePath + '/approvers',
          parentData: data,
          parentDataProperty: 'approvers',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate625.errors);
        errors = vErrors.length;
      }
    }
    if (data.approved !== undefined) {
      if (
        !validate643(data.approved, {
          instancePath: instancePath + '/approved',
          parentData: data,
          parentDataProperty: 'approved',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate643.errors);
        errors = vErrors.length;
      }
    }
    if (data.in_force !== undefined) {
      if (
        !validate653(data.in_force, {
          instancePath: instancePath + '/in_force',
          parentData: data,
          parentDataProperty: 'in_force',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate653.errors);
        errors = vErrors.length;
      }
    }
    if (data.withdrawn !== undefined) {
      if (
        !validate661(data.withdrawn, {
          instancePath: instancePath + '/withdrawn',
          parentData: data,
          parentDataProperty: 'withdrawn',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate661.errors);
        errors = vErrors.length;
      }
    }
    if (data.signatures !== undefined) {
      let data8 = data.signatures;
      if (Array.isArray(data8)) {
        if (data8.length > 50) {
          const err11 = {
            instancePath: instancePath + '/signatures',
            schemaPath: '#/properties/signatures/maxItems',
            keyword: 'maxItems',
            params: { limit: 50 },
          };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
        if (data8.length < 1) {
          const err12 = {
            instancePath: instancePath + '/signatures',
            schemaPath: '#/properties/signatures/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
        const len0 = data8.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate667(data8[i0], {
              instancePath: instancePath + '/signatures/' + i0,
              parentData: data8,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate667.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err13 = {
          instancePath: instancePath + '/signatures',
          schemaPath: '#/properties/signatures/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
      }
    }
    if (data.digest !== undefined) {
      if (
        !validate644(data.digest, {
          instancePath: instancePath + '/digest',
          parentData: data,
          parentDataProperty: 'digest',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate644.errors);
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
  validate620.errors = vErrors;
  return errors === 0;
}
validate620.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const set = validate296;

export const ward = validate671;
const schema171 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward.schema.json',
  type: 'object',
  properties: {
    ward: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    about: { $ref: 'dictionary.schema.json#/$defs/text' },
    ladder: { $ref: 'dictionary.schema.json#/$defs/name' },
    time_zone: { type: 'string', minLength: 1, maxLength: 60 },
    review_by: { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
    owners: {
      type: 'array',
      items: { $ref: 'dictionary.schema.json#/$defs/text' },
      minItems: 1,
      maxItems: 20,
    },
    sources: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: 'dictionary.schema.json#/$defs/source' },
    },
    reads_with: { type: 'array', items: { $ref: '#/$defs/reads_with' }, minItems: 1, maxItems: 100 },
    plans: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/plan' },
    },
    never_together: { type: 'array', items: { $ref: '#/$defs/pair' }, maxItems: 200 },
  },
  required: ['ward', 'edition', 'title', 'ladder', 'reads_with'],
  additionalProperties: false,
  $defs: {
    reads_with: {
      type: 'object',
      properties: {
        protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
        edition: { type: 'integer', minimum: 1, maximum: 100000 },
        when: { $ref: 'protocol.schema.json#/$defs/condition' },
      },
      required: ['protocol', 'edition'],
      additionalProperties: false,
    },
    plan: {
      type: 'object',
      properties: {
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        levels: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: '#/$defs/plan_level' },
        },
        source: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' }, maxItems: 200 },
      },
      required: ['says', 'levels', 'source'],
      additionalProperties: false,
    },
    plan_level: {
      type: 'object',
      properties: {
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        tell: { type: 'array', items: { $ref: 'ladder.schema.json#/$defs/tell' }, minItems: 1, maxItems: 20 },
        respond: { $ref: 'dictionary.schema.json#/$defs/duration' },
        reassess: { $ref: 'dictionary.schema.json#/$defs/duration' },
        if_no_answer: { $ref: 'ladder.schema.json#/$defs/no_answer' },
      },
      additionalProperties: false,
      minProperties: 1,
    },
    pair: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' }, minItems: 2, maxItems: 2 },
  },
};

function validate672(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate672.evaluated;
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
  validate672.errors = vErrors;
  return errors === 0;
}
validate672.evaluated = { dynamicProps: false, dynamicItems: false };

function validate674(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate674.evaluated;
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
  validate674.errors = vErrors;
  return errors === 0;
}
validate674.evaluated = { dynamicProps: false, dynamicItems: false };

function validate680(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate680.evaluated;
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
  validate680.errors = vErrors;
  return errors === 0;
}
validate680.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema175 = {
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer', minimum: 1, maximum: 100000 },
    when: { $ref: 'protocol.schema.json#/$defs/condition' },
  },
  required: ['protocol', 'edition'],
  additionalProperties: false,
};

function validate686(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate686.evaluated;
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
          !validate479(data[key0], {
            instancePath: instancePath + '/' + key0.replace(/~/g, '~0').replace(/\//g, '~1'),
            parentData: data,
            parentDataProperty: key0,
            rootData,
            dynamicAnchors,
          })
        ) {
          vErrors = joined(vErrors, validate479.errors);
          errors = vErrors.length;
        }
      }
    }
    if (data.all !== undefined) {
      if (
        !validate491(data.all, {
          instancePath: instancePath + '/all',
          parentData: data,
          parentDataProperty: 'all',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.any !== undefined) {
      if (
        !validate491(data.any, {
          instancePath: instancePath + '/any',
          parentData: data,
          parentDataProperty: 'any',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.none !== undefined) {
      if (
        !validate491(data.none, {
          instancePath: instancePath + '/none',
          parentData: data,
          parentDataProperty: 'none',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate491.errors);
        errors = vErrors.length;
      }
    }
    if (data.at_least_of !== undefined) {
      if (
        !validate495(data.at_least_of, {
          instancePath: instancePath + '/at_least_of',
          parentData: data,
          parentDataProperty: 'at_least_of',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate495.errors);
        errors = vErrors.length;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate456(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate456.errors);
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
  validate686.errors = vErrors;
  return errors === 0;
}
validate686.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate684(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate684.evaluated;
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
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'edition' || key0 === 'when')) {
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
        !validate672(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate672.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err3 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
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
        if (data1 > 100000 || isNaN(data1)) {
          const err4 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 100000 },
          };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (data1 < 1 || isNaN(data1)) {
          const err5 = {
            instancePath: instancePath + '/edition',
            schemaPath: '#/properties/edition/minimum',
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
    if (data.when !== undefined) {
      if (
        !validate686(data.when, {
          instancePath: instancePath + '/when',
          parentData: data,
          parentDataProperty: 'when',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate686.errors);
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
  validate684.errors = vErrors;
  return errors === 0;
}
validate684.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema177 = {
  type: 'object',
  properties: {
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    levels: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: '#/$defs/plan_level' },
    },
    source: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/name' }, maxItems: 200 },
  },
  required: ['says', 'levels', 'source'],
  additionalProperties: false,
};
const schema178 = {
  type: 'object',
  properties: {
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    tell: { type: 'array', items: { $ref: 'ladder.schema.json#/$defs/tell' }, minItems: 1, maxItems: 20 },
    respond: { $ref: 'dictionary.schema.json#/$defs/duration' },
    reassess: { $ref: 'dictionary.schema.json#/$defs/duration' },
    if_no_answer: { $ref: 'ladder.schema.json#/$defs/no_answer' },
  },
  additionalProperties: false,
  minProperties: 1,
};

function validate701(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate701.evaluated;
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
        !validate362(data.who, {
          instancePath: instancePath + '/who',
          parentData: data,
          parentDataProperty: 'who',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      if (
        !validate371(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate371.errors);
        errors = vErrors.length;
      }
    }
    if (data.to !== undefined) {
      if (
        !validate371(data.to, {
          instancePath: instancePath + '/to',
          parentData: data,
          parentDataProperty: 'to',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate371.errors);
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
  validate701.errors = vErrors;
  return errors === 0;
}
validate701.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate706(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate706.evaluated;
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
  validate706.errors = vErrors;
  return errors === 0;
}
validate706.evaluated = { dynamicProps: false, dynamicItems: false };

function validate709(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate709.evaluated;
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
        !validate375(data.after, {
          instancePath: instancePath + '/after',
          parentData: data,
          parentDataProperty: 'after',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      if (
        !validate362(data.tell, {
          instancePath: instancePath + '/tell',
          parentData: data,
          parentDataProperty: 'tell',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
  validate709.errors = vErrors;
  return errors === 0;
}
validate709.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate699(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate699.evaluated;
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
      if (!(
        key0 === 'says' ||
        key0 === 'tell' ||
        key0 === 'respond' ||
        key0 === 'reassess' ||
        key0 === 'if_no_answer'
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
    if (data.says !== undefined) {
      if (
        !validate674(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate674.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      let data1 = data.tell;
      if (Array.isArray(data1)) {
        if (data1.length > 20) {
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
        if (data1.length < 1) {
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
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate701(data1[i0], {
              instancePath: instancePath + '/tell/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate701.errors);
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
        !validate706(data.respond, {
          instancePath: instancePath + '/respond',
          parentData: data,
          parentDataProperty: 'respond',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate706.errors);
        errors = vErrors.length;
      }
    }
    if (data.reassess !== undefined) {
      if (
        !validate706(data.reassess, {
          instancePath: instancePath + '/reassess',
          parentData: data,
          parentDataProperty: 'reassess',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate706.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_no_answer !== undefined) {
      if (
        !validate709(data.if_no_answer, {
          instancePath: instancePath + '/if_no_answer',
          parentData: data,
          parentDataProperty: 'if_no_answer',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate709.errors);
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
  validate699.errors = vErrors;
  return errors === 0;
}
validate699.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate696(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate696.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.says === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'says' },
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
    if (data.source === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'source' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!(key0 === 'says' || key0 === 'levels' || key0 === 'source')) {
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
    if (data.says !== undefined) {
      if (
        !validate674(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate674.errors);
        errors = vErrors.length;
      }
    }
    if (data.levels !== undefined) {
      let data1 = data.levels;
      if (data1 && typeof data1 == 'object' && !Array.isArray(data1)) {
        for (const key1 in data1) {
          const _errs5 = errors;
          if (
            !validate672(key1, {
              instancePath: instancePath + '/levels',
              parentData: data1,
              parentDataProperty: 'levels',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate672.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs5 === errors;
          if (!valid1) {
            const err4 = {
              instancePath: instancePath + '/levels',
              schemaPath: '#/properties/levels/propertyNames',
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
        for (const key2 in data1) {
          if (
            !validate699(data1[key2], {
              instancePath: instancePath + '/levels/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data1,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate699.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/levels',
          schemaPath: '#/properties/levels/type',
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
    if (data.source !== undefined) {
      let data3 = data.source;
      if (Array.isArray(data3)) {
        if (data3.length > 200) {
          const err6 = {
            instancePath: instancePath + '/source',
            schemaPath: '#/properties/source/maxItems',
            keyword: 'maxItems',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        const len0 = data3.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate672(data3[i0], {
              instancePath: instancePath + '/source/' + i0,
              parentData: data3,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate672.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err7 = {
          instancePath: instancePath + '/source',
          schemaPath: '#/properties/source/type',
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
    const err8 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err8];
    } else {
      vErrors.push(err8);
    }
    errors++;
  }
  validate696.errors = vErrors;
  return errors === 0;
}
validate696.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema182 = {
  type: 'array',
  items: { $ref: 'dictionary.schema.json#/$defs/name' },
  minItems: 2,
  maxItems: 2,
};

function validate716(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate716.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (Array.isArray(data)) {
    if (data.length > 2) {
      const err0 = { instancePath, schemaPath: '#/maxItems', keyword: 'maxItems', params: { limit: 2 } };
      if (vErrors === null) {
        vErrors = [err0];
      } else {
        vErrors.push(err0);
      }
      errors++;
    }
    if (data.length < 2) {
      const err1 = { instancePath, schemaPath: '#/minItems', keyword: 'minItems', params: { limit: 2 } };
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
        !validate672(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate672.errors);
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
  validate716.errors = vErrors;
  return errors === 0;
}
validate716.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate671(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="ward.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate671.evaluated;
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
      if (!func5.call(schema171.properties, key0)) {
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
        !validate672(data.ward, {
          instancePath: instancePath + '/ward',
          parentData: data,
          parentDataProperty: 'ward',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate672.errors);
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
        !validate674(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate674.errors);
        errors = vErrors.length;
      }
    }
    if (data.about !== undefined) {
      if (
        !validate674(data.about, {
          instancePath: instancePath + '/about',
          parentData: data,
          parentDataProperty: 'about',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate674.errors);
        errors = vErrors.length;
      }
    }
    if (data.ladder !== undefined) {
      if (
        !validate672(data.ladder, {
          instancePath: instancePath + '/ladder',
          parentData: data,
          parentDataProperty: 'ladder',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate672.errors);
        errors = vErrors.length;
      }
    }
    if (data.time_zone !== undefined) {
      let data5 = data.time_zone;
      if (typeof data5 === 'string') {
        if (func1(data5) > 60) {
          const err9 = {
            instancePath: instancePath + '/time_zone',
            schemaPath: '#/properties/time_zone/maxLength',
            keyword: 'maxLength',
            params: { limit: 60 },
          };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (func1(data5) < 1) {
          const err10 = {
            instancePath: instancePath + '/time_zone',
            schemaPath: '#/properties/time_zone/minLength',
            keyword: 'minLength',
            params: { limit: 1 },
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
          instancePath: instancePath + '/time_zone',
          schemaPath: '#/properties/time_zone/type',
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
    if (data.review_by !== undefined) {
      let data6 = data.review_by;
      if (typeof data6 === 'string') {
        if (!pattern9.test(data6)) {
          const err12 = {
            instancePath: instancePath + '/review_by',
            schemaPath: '#/properties/review_by/pattern',
            keyword: 'pattern',
            params: { pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$' },
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
          instancePath: instancePath + '/review_by',
          schemaPath: '#/properties/review_by/type',
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
    if (data.owners !== undefined) {
      let data7 = data.owners;
      if (Array.isArray(data7)) {
        if (data7.length > 20) {
          const err14 = {
            instancePath: instancePath + '/owners',
            schemaPath: '#/properties/owners/maxItems',
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
        if (data7.length < 1) {
          const err15 = {
            instancePath: instancePath + '/owners',
            schemaPath: '#/properties/owners/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          if (vErrors === null) {
            vErrors = [err15];
          } else {
            vErrors.push(err15);
          }
          errors++;
        }
        const len0 = data7.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate674(data7[i0], {
              instancePath: instancePath + '/owners/' + i0,
              parentData: data7,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate674.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err16 = {
          instancePath: instancePath + '/owners',
          schemaPath: '#/properties/owners/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err16];
        } else {
          vErrors.push(err16);
        }
        errors++;
      }
    }
    if (data.sources !== undefined) {
      let data9 = data.sources;
      if (data9 && typeof data9 == 'object' && !Array.isArray(data9)) {
        for (const key1 in data9) {
          const _errs17 = errors;
          if (
            !validate672(key1, {
              instancePath: instancePath + '/sources',
              parentData: data9,
              parentDataProperty: 'sources',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate672.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs17 === errors;
          if (!valid3) {
            const err17 = {
              instancePath: instancePath + '/sources',
              schemaPath: '#/properties/sources/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
        }
        for (const key2 in data9) {
          if (
            !validate680(data9[key2], {
              instancePath: instancePath + '/sources/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data9,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate680.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err18 = {
          instancePath: instancePath + '/sources',
          schemaPath: '#/properties/sources/type',
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
    if (data.reads_with !== undefined) {
      let data11 = data.reads_with;
      if (Array.isArray(data11)) {
        if (data11.length > 100) {
          const err19 = {
            instancePath: instancePath + '/reads_with',
            schemaPath: '#/properties/reads_with/maxItems',
            keyword: 'maxItems',
            params: { limit: 100 },
          };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        if (data11.length < 1) {
          const err20 = {
            instancePath: instancePath + '/reads_with',
            schemaPath: '#/properties/reads_with/minItems',
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
        const len1 = data11.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate684(data11[i1], {
              instancePath: instancePath + '/reads_with/' + i1,
              parentData: data11,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate684.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err21 = {
          instancePath: instancePath + '/reads_with',
          schemaPath: '#/properties/reads_with/type',
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
    if (data.plans !== undefined) {
      let data13 = data.plans;
      if (data13 && typeof data13 == 'object' && !Array.isArray(data13)) {
        for (const key3 in data13) {
          const _errs25 = errors;
          if (
            !validate672(key3, {
              instancePath: instancePath + '/plans',
              parentData: data13,
              parentDataProperty: 'plans',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate672.errors);
            errors = vErrors.length;
          }
          var valid7 = _errs25 === errors;
          if (!valid7) {
            const err22 = {
              instancePath: instancePath + '/plans',
              schemaPath: '#/properties/plans/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err22];
            } else {
              vErrors.push(err22);
            }
            errors++;
          }
        }
        for (const key4 in data13) {
          if (
            !validate696(data13[key4], {
              instancePath: instancePath + '/plans/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data13,
              parentDataProperty: key4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate696.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err23 = {
          instancePath: instancePath + '/plans',
          schemaPath: '#/properties/plans/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        if (vErrors === null) {
          vErrors = [err23];
        } else {
          vErrors.push(err23);
        }
        errors++;
      }
    }
    if (data.never_together !== undefined) {
      let data15 = data.never_together;
      if (Array.isArray(data15)) {
        if (data15.length > 200) {
          const err24 = {
            instancePath: instancePath + '/never_together',
            schemaPath: '#/properties/never_together/maxItems',
            keyword: 'maxItems',
            params: { limit: 200 },
          };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
        const len2 = data15.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate716(data15[i2], {
              instancePath: instancePath + '/never_together/' + i2,
              parentData: data15,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate716.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err25 = {
          instancePath: instancePath + '/never_together',
          schemaPath: '#/properties/never_together/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
    }
  } else {
    const err26 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err26];
    } else {
      vErrors.push(err26);
    }
    errors++;
  }
  validate671.errors = vErrors;
  return errors === 0;
}
validate671.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const ward_cases = validate719;
const schema183 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward_cases.schema.json',
  type: 'object',
  properties: {
    ward: { $ref: 'dictionary.schema.json#/$defs/name' },
    cases: { type: 'array', items: { $ref: '#/$defs/case' }, maxItems: 100000 },
  },
  required: ['ward', 'cases'],
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
        teach: { $ref: 'cases.schema.json#/$defs/teach' },
      },
      required: ['case', 'expect'],
      additionalProperties: false,
    },
    expect: {
      type: 'object',
      properties: {
        level: { $ref: 'cases.schema.json#/$defs/expected_level' },
        tell: {
          type: 'array',
          items: { $ref: 'dictionary.schema.json#/$defs/text' },
          minItems: 1,
          maxItems: 20,
        },
        plan: { $ref: 'dictionary.schema.json#/$defs/name' },
        in_force: { $ref: 'dictionary.schema.json#/$defs/name' },
        may_step_down: { $ref: 'dictionary.schema.json#/$defs/yes' },
        protocols: {
          type: 'object',
          propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
          additionalProperties: { $ref: 'cases.schema.json#/$defs/expect' },
        },
      },
      minProperties: 1,
      additionalProperties: false,
    },
  },
};

function validate720(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate720.evaluated;
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
  validate720.errors = vErrors;
  return errors === 0;
}
validate720.evaluated = { dynamicProps: false, dynamicItems: false };

const schema185 = {
  type: 'object',
  properties: {
    case: { $ref: 'dictionary.schema.json#/$defs/text' },
    story: { $ref: 'dictionary.schema.json#/$defs/text' },
    source: { $ref: 'dictionary.schema.json#/$defs/name' },
    given: { $ref: 'set.schema.json' },
    series: { $ref: 'set.schema.json' },
    expect: { $ref: '#/$defs/expect' },
    teach: { $ref: 'cases.schema.json#/$defs/teach' },
  },
  required: ['case', 'expect'],
  additionalProperties: false,
};

function validate723(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate723.evaluated;
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
  validate723.errors = vErrors;
  return errors === 0;
}
validate723.evaluated = { dynamicProps: false, dynamicItems: false };

const schema187 = {
  type: 'object',
  properties: {
    level: { $ref: 'cases.schema.json#/$defs/expected_level' },
    tell: { type: 'array', items: { $ref: 'dictionary.schema.json#/$defs/text' }, minItems: 1, maxItems: 20 },
    plan: { $ref: 'dictionary.schema.json#/$defs/name' },
    in_force: { $ref: 'dictionary.schema.json#/$defs/name' },
    may_step_down: { $ref: 'dictionary.schema.json#/$defs/yes' },
    protocols: {
      type: 'object',
      propertyNames: { $ref: 'dictionary.schema.json#/$defs/name' },
      additionalProperties: { $ref: 'cases.schema.json#/$defs/expect' },
    },
  },
  minProperties: 1,
  additionalProperties: false,
};

function validate730(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate730.evaluated;
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
        !validate289(data.at_least, {
          instancePath: instancePath + '/at_least',
          parentData: data,
          parentDataProperty: 'at_least',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
        errors = vErrors.length;
      }
    }
    if (data.could_be !== undefined) {
      if (
        !validate289(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate289.errors);
        errors = vErrors.length;
      }
    }
    if (data.settled !== undefined) {
      if (
        !validate327(data.settled, {
          instancePath: instancePath + '/settled',
          parentData: data,
          parentDataProperty: 'settled',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate327.errors);
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
  validate730.errors = vErrors;
  return errors === 0;
}
validate730.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate738(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate738.evaluated;
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
  validate738.errors = vErrors;
  return errors === 0;
}
validate738.evaluated = { dynamicProps: false, dynamicItems: false };

function validate741(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate741.evaluated;
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
      if (!func5.call(schema91.properties, key0)) {
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
        !validate324(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate324.errors);
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
          params: { type: schema91.properties.applies.type },
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
          params: { allowedValues: schema91.properties.applies.enum },
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
        !validate330(data.met, {
          instancePath: instancePath + '/met',
          parentData: data,
          parentDataProperty: 'met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.not_met !== undefined) {
      if (
        !validate330(data.not_met, {
          instancePath: instancePath + '/not_met',
          parentData: data,
          parentDataProperty: 'not_met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.undecided !== undefined) {
      if (
        !validate330(data.undecided, {
          instancePath: instancePath + '/undecided',
          parentData: data,
          parentDataProperty: 'undecided',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained !== undefined) {
      if (
        !validate330(data.explained, {
          instancePath: instancePath + '/explained',
          parentData: data,
          parentDataProperty: 'explained',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.faults !== undefined) {
      if (
        !validate330(data.faults, {
          instancePath: instancePath + '/faults',
          parentData: data,
          parentDataProperty: 'faults',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.truth !== undefined) {
      let data7 = data.truth;
      if (data7 && typeof data7 == 'object' && !Array.isArray(data7)) {
        for (const key1 in data7) {
          const _errs12 = errors;
          if (
            !validate289(key1, {
              instancePath: instancePath + '/truth',
              parentData: data7,
              parentDataProperty: 'truth',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate289.errors);
            errors = vErrors.length;
          }
          var valid1 = _errs12 === errors;
          if (!valid1) {
            const err4 = {
              instancePath: instancePath + '/truth',
              schemaPath: '#/properties/truth/propertyNames',
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
        for (const key2 in data7) {
          if (
            !validate338(data7[key2], {
              instancePath: instancePath + '/truth/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data7,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate338.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err5 = {
          instancePath: instancePath + '/truth',
          schemaPath: '#/properties/truth/type',
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
    if (data.not_reliable !== undefined) {
      if (
        !validate330(data.not_reliable, {
          instancePath: instancePath + '/not_reliable',
          parentData: data,
          parentDataProperty: 'not_reliable',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.refused !== undefined) {
      if (
        !validate330(data.refused, {
          instancePath: instancePath + '/refused',
          parentData: data,
          parentDataProperty: 'refused',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.questioned !== undefined) {
      if (
        !validate330(data.questioned, {
          instancePath: instancePath + '/questioned',
          parentData: data,
          parentDataProperty: 'questioned',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.take_first !== undefined) {
      if (
        !validate330(data.take_first, {
          instancePath: instancePath + '/take_first',
          parentData: data,
          parentDataProperty: 'take_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask_first !== undefined) {
      if (
        !validate330(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate330.errors);
        errors = vErrors.length;
      }
    }
    if (data.measures !== undefined) {
      let data14 = data.measures;
      if (data14 && typeof data14 == 'object' && !Array.isArray(data14)) {
        for (const key3 in data14) {
          const _errs22 = errors;
          if (
            !validate289(key3, {
              instancePath: instancePath + '/measures',
              parentData: data14,
              parentDataProperty: 'measures',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate289.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs22 === errors;
          if (!valid3) {
            const err6 = {
              instancePath: instancePath + '/measures',
              schemaPath: '#/properties/measures/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key3 },
            };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        }
        for (const key4 in data14) {
          if (
            !validate346(data14[key4], {
              instancePath: instancePath + '/measures/' + key4.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data14,
              parentDataProperty: key4,
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
          instancePath: instancePath + '/measures',
          schemaPath: '#/properties/measures/type',
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
    if (data.nothing_else_met !== undefined) {
      if (
        !validate327(data.nothing_else_met, {
          instancePath: instancePath + '/nothing_else_met',
          parentData: data,
          parentDataProperty: 'nothing_else_met',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate327.errors);
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
  validate741.errors = vErrors;
  return errors === 0;
}
validate741.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate729(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate729.evaluated;
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
      if (!(
        key0 === 'level' ||
        key0 === 'tell' ||
        key0 === 'plan' ||
        key0 === 'in_force' ||
        key0 === 'may_step_down' ||
        key0 === 'protocols'
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
        !validate730(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate730.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      let data1 = data.tell;
      if (Array.isArray(data1)) {
        if (data1.length > 20) {
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
        if (data1.length < 1) {
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
        const len0 = data1.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate723(data1[i0], {
              instancePath: instancePath + '/tell/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate723.errors);
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
    if (data.plan !== undefined) {
      if (
        !validate720(data.plan, {
          instancePath: instancePath + '/plan',
          parentData: data,
          parentDataProperty: 'plan',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate720.errors);
        errors = vErrors.length;
      }
    }
    if (data.in_force !== undefined) {
      if (
        !validate720(data.in_force, {
          instancePath: instancePath + '/in_force',
          parentData: data,
          parentDataProperty: 'in_force',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate720.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_step_down !== undefined) {
      if (
        !validate738(data.may_step_down, {
          instancePath: instancePath + '/may_step_down',
          parentData: data,
          parentDataProperty: 'may_step_down',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate738.errors);
        errors = vErrors.length;
      }
    }
    if (data.protocols !== undefined) {
      let data6 = data.protocols;
      if (data6 && typeof data6 == 'object' && !Array.isArray(data6)) {
        for (const key1 in data6) {
          const _errs11 = errors;
          if (
            !validate720(key1, {
              instancePath: instancePath + '/protocols',
              parentData: data6,
              parentDataProperty: 'protocols',
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate720.errors);
            errors = vErrors.length;
          }
          var valid3 = _errs11 === errors;
          if (!valid3) {
            const err5 = {
              instancePath: instancePath + '/protocols',
              schemaPath: '#/properties/protocols/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: key1 },
            };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
        }
        for (const key2 in data6) {
          if (
            !validate741(data6[key2], {
              instancePath: instancePath + '/protocols/' + key2.replace(/~/g, '~0').replace(/\//g, '~1'),
              parentData: data6,
              parentDataProperty: key2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate741.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err6 = {
          instancePath: instancePath + '/protocols',
          schemaPath: '#/properties/protocols/type',
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
  validate729.errors = vErrors;
  return errors === 0;
}
validate729.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate760(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate760.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    for (const key0 in data) {
      if (!(key0 === 'ask_first' || key0 === 'common_mistake' || key0 === 'output_and_vessels')) {
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
        !validate292(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.common_mistake !== undefined) {
      if (
        !validate292(data.common_mistake, {
          instancePath: instancePath + '/common_mistake',
          parentData: data,
          parentDataProperty: 'common_mistake',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate292.errors);
        errors = vErrors.length;
      }
    }
    if (data.output_and_vessels !== undefined) {
      let data2 = data.output_and_vessels;
      if (typeof data2 !== 'string') {
        const err1 = {
          instancePath: instancePath + '/output_and_vessels',
          schemaPath: '#/properties/output_and_vessels/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      if (!(
        data2 === 'output_falls_vessels_squeeze' ||
        data2 === 'vessels_have_let_go' ||
        data2 === 'both_fail' ||
        data2 === 'neither' ||
        data2 === 'cannot_say'
      )) {
        const err2 = {
          instancePath: instancePath + '/output_and_vessels',
          schemaPath: '#/properties/output_and_vessels/enum',
          keyword: 'enum',
          params: { allowedValues: schema97.properties.output_and_vessels.enum },
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
  validate760.errors = vErrors;
  return errors === 0;
}
validate760.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate722(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate722.evaluated;
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
        !validate723(data.case, {
          instancePath: instancePath + '/case',
          parentData: data,
          parentDataProperty: 'case',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate723.errors);
        errors = vErrors.length;
      }
    }
    if (data.story !== undefined) {
      if (
        !validate723(data.story, {
          instancePath: instancePath + '/story',
          parentData: data,
          parentDataProperty: 'story',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate723.errors);
        errors = vErrors.length;
      }
    }
    if (data.source !== undefined) {
      if (
        !validate720(data.source, {
          instancePath: instancePath + '/source',
          parentData: data,
          parentDataProperty: 'source',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate720.errors);
        errors = vErrors.length;
      }
    }
    if (data.given !== undefined) {
      if (
        !validate296(data.given, {
          instancePath: instancePath + '/given',
          parentData: data,
          parentDataProperty: 'given',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate296.errors);
        errors = vErrors.length;
      }
    }
    if (data.series !== undefined) {
      if (
        !validate296(data.series, {
          instancePath: instancePath + '/series',
          parentData: data,
          parentDataProperty: 'series',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate296.errors);
        errors = vErrors.length;
      }
    }
    if (data.expect !== undefined) {
      if (
        !validate729(data.expect, {
          instancePath: instancePath + '/expect',
          parentData: data,
          parentDataProperty: 'expect',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate729.errors);
        errors = vErrors.length;
      }
    }
    if (data.teach !== undefined) {
      if (
        !validate760(data.teach, {
          instancePath: instancePath + '/teach',
          parentData: data,
          parentDataProperty: 'teach',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate760.errors);
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
  validate722.errors = vErrors;
  return errors === 0;
}
validate722.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate719(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="ward_cases.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate719.evaluated;
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
      if (!(key0 === 'ward' || key0 === 'cases')) {
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
    if (data.ward !== undefined) {
      if (
        !validate720(data.ward, {
          instancePath: instancePath + '/ward',
          parentData: data,
          parentDataProperty: 'ward',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate720.errors);
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
            !validate722(data1[i0], {
              instancePath: instancePath + '/cases/' + i0,
              parentData: data1,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate722.errors);
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
  validate719.errors = vErrors;
  return errors === 0;
}
validate719.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

export const ward_outcome = validate765;
const schema192 = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'ward_outcome.schema.json',
  type: 'object',
  properties: {
    ward: { $ref: 'dictionary.schema.json#/$defs/name' },
    edition: { type: 'integer' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    digest: { type: 'string' },
    policy: { $ref: '#/$defs/policy' },
    at: { type: ['string', 'null'] },
    level: { $ref: 'outcome.schema.json#/$defs/level' },
    plan: { $ref: '#/$defs/plan' },
    response: { $ref: '#/$defs/response' },
    in_force: { $ref: 'outcome.schema.json#/$defs/in_force' },
    reads: { type: 'array', items: { $ref: 'outcome.schema.json' } },
    advice: { type: 'array', items: { $ref: '#/$defs/advice' } },
    ask_first: { $ref: 'outcome.schema.json#/$defs/names' },
    take_first: { $ref: 'outcome.schema.json#/$defs/names' },
    missing: { $ref: 'outcome.schema.json#/$defs/names' },
    unobtainable: { type: 'array', items: { $ref: 'outcome.schema.json#/$defs/without_value' } },
    declined: { type: 'array', items: { $ref: 'outcome.schema.json#/$defs/without_value' } },
    would_tell_more: { $ref: 'outcome.schema.json#/$defs/names' },
    faults: { type: 'array', items: { $ref: '#/$defs/fault' } },
    refused: { type: 'array', items: { $ref: 'outcome.schema.json#/$defs/remark' } },
    questioned: { type: 'array', items: { $ref: 'outcome.schema.json#/$defs/remark' } },
    caution: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: [
    'ward',
    'edition',
    'title',
    'digest',
    'at',
    'level',
    'reads',
    'advice',
    'ask_first',
    'take_first',
    'missing',
    'unobtainable',
    'declined',
    'would_tell_more',
    'refused',
    'questioned',
    'caution',
  ],
  additionalProperties: false,
  $defs: {
    plan: {
      type: 'object',
      properties: {
        plan: { $ref: 'dictionary.schema.json#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
      },
      required: ['plan', 'title', 'says'],
      additionalProperties: false,
    },
    response: {
      type: 'object',
      properties: {
        level: { $ref: 'dictionary.schema.json#/$defs/name' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        tell: { type: 'array', items: { $ref: 'ladder.schema.json#/$defs/tell' } },
        respond: { $ref: 'dictionary.schema.json#/$defs/duration' },
        reassess: { $ref: 'dictionary.schema.json#/$defs/duration' },
        if_no_answer: { $ref: 'ladder.schema.json#/$defs/no_answer' },
        step_down: { $ref: 'ladder.schema.json#/$defs/step_down' },
      },
      required: ['level', 'tell'],
      additionalProperties: false,
    },
    advice: {
      type: 'object',
      properties: {
        protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
        rule: { $ref: 'outcome.schema.json#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        level: { $ref: 'outcome.schema.json#/$defs/name' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        because: { $ref: 'dictionary.schema.json#/$defs/text' },
        explained_by: { $ref: 'outcome.schema.json#/$defs/sentence' },
        ask: { $ref: 'outcome.schema.json#/$defs/sentences' },
        do: { $ref: 'outcome.schema.json#/$defs/sentences' },
      },
      required: ['protocol', 'rule', 'title', 'ask', 'do'],
      additionalProperties: false,
    },
    fault: {
      type: 'object',
      properties: {
        fault: { $ref: 'outcome.schema.json#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        says: { $ref: 'dictionary.schema.json#/$defs/text' },
        do: { $ref: 'outcome.schema.json#/$defs/sentences' },
        readings: { type: 'array', items: { $ref: 'outcome.schema.json#/$defs/reading' } },
        changes: { type: 'array', items: { $ref: '#/$defs/doubted' } },
      },
      required: ['fault', 'title', 'says', 'do', 'readings', 'changes'],
      additionalProperties: false,
    },
    doubted: {
      type: 'object',
      properties: {
        protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
        rule: { $ref: 'outcome.schema.json#/$defs/name' },
        title: { $ref: 'dictionary.schema.json#/$defs/text' },
        level: { $ref: 'outcome.schema.json#/$defs/name' },
      },
      required: ['protocol', 'rule', 'title'],
      additionalProperties: false,
    },
    policy: {
      type: 'object',
      properties: {
        in_force_from: { type: 'string', maxLength: 40 },
        by: { type: 'string', maxLength: 80 },
        review_overdue: { type: 'string', maxLength: 10 },
        warning: { type: 'string', maxLength: 2000 },
      },
      required: ['in_force_from', 'by'],
      additionalProperties: false,
    },
  },
};

function validate766(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate766.evaluated;
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
  validate766.errors = vErrors;
  return errors === 0;
}
validate766.evaluated = { dynamicProps: false, dynamicItems: false };

function validate768(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate768.evaluated;
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
  validate768.errors = vErrors;
  return errors === 0;
}
validate768.evaluated = { dynamicProps: false, dynamicItems: false };

const schema195 = {
  type: 'object',
  properties: {
    in_force_from: { type: 'string', maxLength: 40 },
    by: { type: 'string', maxLength: 80 },
    review_overdue: { type: 'string', maxLength: 10 },
    warning: { type: 'string', maxLength: 2000 },
  },
  required: ['in_force_from', 'by'],
  additionalProperties: false,
};

function validate770(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate770.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.in_force_from === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'in_force_from' },
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
      if (!(key0 === 'in_force_from' || key0 === 'by' || key0 === 'review_overdue' || key0 === 'warning')) {
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
    if (data.in_force_from !== undefined) {
      let data0 = data.in_force_from;
      if (typeof data0 === 'string') {
        if (func1(data0) > 40) {
          const err3 = {
            instancePath: instancePath + '/in_force_from',
            schemaPath: '#/properties/in_force_from/maxLength',
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
          instancePath: instancePath + '/in_force_from',
          schemaPath: '#/properties/in_force_from/type',
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
    if (data.by !== undefined) {
      let data1 = data.by;
      if (typeof data1 === 'string') {
        if (func1(data1) > 80) {
          const err5 = {
            instancePath: instancePath + '/by',
            schemaPath: '#/properties/by/maxLength',
            keyword: 'maxLength',
            params: { limit: 80 },
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
          instancePath: instancePath + '/by',
          schemaPath: '#/properties/by/type',
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
    if (data.review_overdue !== undefined) {
      let data2 = data.review_overdue;
      if (typeof data2 === 'string') {
        if (func1(data2) > 10) {
          const err7 = {
            instancePath: instancePath + '/review_overdue',
            schemaPath: '#/properties/review_overdue/maxLength',
            keyword: 'maxLength',
            params: { limit: 10 },
          };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      } else {
        const err8 = {
          instancePath: instancePath + '/review_overdue',
          schemaPath: '#/properties/review_overdue/type',
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
    }
    if (data.warning !== undefined) {
      let data3 = data.warning;
      if (typeof data3 === 'string') {
        if (func1(data3) > 2000) {
          const err9 = {
            instancePath: instancePath + '/warning',
            schemaPath: '#/properties/warning/maxLength',
            keyword: 'maxLength',
            params: { limit: 2000 },
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
          instancePath: instancePath + '/warning',
          schemaPath: '#/properties/warning/type',
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
  } else {
    const err11 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err11];
    } else {
      vErrors.push(err11);
    }
    errors++;
  }
  validate770.errors = vErrors;
  return errors === 0;
}
validate770.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate772(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate772.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (!(data && typeof data == 'object' && !Array.isArray(data)) && data !== null) {
    const err0 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: schema57.type } };
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
          params: { type: schema57.properties.at_least.type },
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
        !validate137(data.could_be, {
          instancePath: instancePath + '/could_be',
          parentData: data,
          parentDataProperty: 'could_be',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate772.errors = vErrors;
  return errors === 0;
}
validate772.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema197 = {
  type: 'object',
  properties: {
    plan: { $ref: 'dictionary.schema.json#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
  },
  required: ['plan', 'title', 'says'],
  additionalProperties: false,
};

function validate775(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate775.evaluated;
  if (evaluated0.dynamicProps) {
    evaluated0.props = undefined;
  }
  if (evaluated0.dynamicItems) {
    evaluated0.items = undefined;
  }
  if (data && typeof data == 'object' && !Array.isArray(data)) {
    if (data.plan === undefined) {
      const err0 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'plan' },
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
    for (const key0 in data) {
      if (!(key0 === 'plan' || key0 === 'title' || key0 === 'says')) {
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
    if (data.plan !== undefined) {
      if (
        !validate766(data.plan, {
          instancePath: instancePath + '/plan',
          parentData: data,
          parentDataProperty: 'plan',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate766.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate768(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate768(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
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
  validate775.errors = vErrors;
  return errors === 0;
}
validate775.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema198 = {
  type: 'object',
  properties: {
    level: { $ref: 'dictionary.schema.json#/$defs/name' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    tell: { type: 'array', items: { $ref: 'ladder.schema.json#/$defs/tell' } },
    respond: { $ref: 'dictionary.schema.json#/$defs/duration' },
    reassess: { $ref: 'dictionary.schema.json#/$defs/duration' },
    if_no_answer: { $ref: 'ladder.schema.json#/$defs/no_answer' },
    step_down: { $ref: 'ladder.schema.json#/$defs/step_down' },
  },
  required: ['level', 'tell'],
  additionalProperties: false,
};

function validate783(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate783.evaluated;
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
        !validate362(data.who, {
          instancePath: instancePath + '/who',
          parentData: data,
          parentDataProperty: 'who',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
        errors = vErrors.length;
      }
    }
    if (data.from !== undefined) {
      if (
        !validate371(data.from, {
          instancePath: instancePath + '/from',
          parentData: data,
          parentDataProperty: 'from',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate371.errors);
        errors = vErrors.length;
      }
    }
    if (data.to !== undefined) {
      if (
        !validate371(data.to, {
          instancePath: instancePath + '/to',
          parentData: data,
          parentDataProperty: 'to',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate371.errors);
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
  validate783.errors = vErrors;
  return errors === 0;
}
validate783.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate788(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate788.evaluated;
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
  validate788.errors = vErrors;
  return errors === 0;
}
validate788.evaluated = { dynamicProps: false, dynamicItems: false };

function validate791(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate791.evaluated;
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
        !validate375(data.after, {
          instancePath: instancePath + '/after',
          parentData: data,
          parentDataProperty: 'after',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      if (
        !validate362(data.tell, {
          instancePath: instancePath + '/tell',
          parentData: data,
          parentDataProperty: 'tell',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
  validate791.errors = vErrors;
  return errors === 0;
}
validate791.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate795(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate795.evaluated;
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
        !validate375(data.over, {
          instancePath: instancePath + '/over',
          parentData: data,
          parentDataProperty: 'over',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate375.errors);
        errors = vErrors.length;
      }
    }
    if (data.agreed_by !== undefined) {
      if (
        !validate362(data.agreed_by, {
          instancePath: instancePath + '/agreed_by',
          parentData: data,
          parentDataProperty: 'agreed_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate362.errors);
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
  validate795.errors = vErrors;
  return errors === 0;
}
validate795.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate780(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate780.evaluated;
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
      if (!(
        key0 === 'level' ||
        key0 === 'says' ||
        key0 === 'tell' ||
        key0 === 'respond' ||
        key0 === 'reassess' ||
        key0 === 'if_no_answer' ||
        key0 === 'step_down'
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
    if (data.level !== undefined) {
      if (
        !validate766(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate766.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate768(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.tell !== undefined) {
      let data2 = data.tell;
      if (Array.isArray(data2)) {
        const len0 = data2.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate783(data2[i0], {
              instancePath: instancePath + '/tell/' + i0,
              parentData: data2,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate783.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err3 = {
          instancePath: instancePath + '/tell',
          schemaPath: '#/properties/tell/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
    }
    if (data.respond !== undefined) {
      if (
        !validate788(data.respond, {
          instancePath: instancePath + '/respond',
          parentData: data,
          parentDataProperty: 'respond',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate788.errors);
        errors = vErrors.length;
      }
    }
    if (data.reassess !== undefined) {
      if (
        !validate788(data.reassess, {
          instancePath: instancePath + '/reassess',
          parentData: data,
          parentDataProperty: 'reassess',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate788.errors);
        errors = vErrors.length;
      }
    }
    if (data.if_no_answer !== undefined) {
      if (
        !validate791(data.if_no_answer, {
          instancePath: instancePath + '/if_no_answer',
          parentData: data,
          parentDataProperty: 'if_no_answer',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate791.errors);
        errors = vErrors.length;
      }
    }
    if (data.step_down !== undefined) {
      if (
        !validate795(data.step_down, {
          instancePath: instancePath + '/step_down',
          parentData: data,
          parentDataProperty: 'step_down',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate795.errors);
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
  validate780.errors = vErrors;
  return errors === 0;
}
validate780.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate800(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate800.evaluated;
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
    if (data.since === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'since' },
      };
      if (vErrors === null) {
        vErrors = [err1];
      } else {
        vErrors.push(err1);
      }
      errors++;
    }
    if (data.last_at === undefined) {
      const err2 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'last_at' },
      };
      if (vErrors === null) {
        vErrors = [err2];
      } else {
        vErrors.push(err2);
      }
      errors++;
    }
    if (data.sets_below === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sets_below' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.minutes === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'minutes' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    if (data.may_step_down === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'may_step_down' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema70.properties, key0)) {
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
    if (data.level !== undefined) {
      if (
        !validate137(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
        errors = vErrors.length;
      }
    }
    if (data.since !== undefined) {
      if (typeof data.since !== 'string') {
        const err7 = {
          instancePath: instancePath + '/since',
          schemaPath: '#/properties/since/type',
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
    if (data.last_at !== undefined) {
      if (typeof data.last_at !== 'string') {
        const err8 = {
          instancePath: instancePath + '/last_at',
          schemaPath: '#/properties/last_at/type',
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
    }
    if (data.sets_below !== undefined) {
      let data3 = data.sets_below;
      if (!(typeof data3 == 'number' && !(data3 % 1) && !isNaN(data3) && isFinite(data3))) {
        const err9 = {
          instancePath: instancePath + '/sets_below',
          schemaPath: '#/properties/sets_below/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err9];
        } else {
          vErrors.push(err9);
        }
        errors++;
      }
    }
    if (data.sets_asked !== undefined) {
      let data4 = data.sets_asked;
      if (!(typeof data4 == 'number' && !(data4 % 1) && !isNaN(data4) && isFinite(data4))) {
        const err10 = {
          instancePath: instancePath + '/sets_asked',
          schemaPath: '#/properties/sets_asked/type',
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
    }
    if (data.minutes !== undefined) {
      let data5 = data.minutes;
      if (!(typeof data5 == 'number' && !(data5 % 1) && !isNaN(data5) && isFinite(data5))) {
        const err11 = {
          instancePath: instancePath + '/minutes',
          schemaPath: '#/properties/minutes/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err11];
        } else {
          vErrors.push(err11);
        }
        errors++;
      }
    }
    if (data.minutes_asked !== undefined) {
      let data6 = data.minutes_asked;
      if (!(typeof data6 == 'number' && !(data6 % 1) && !isNaN(data6) && isFinite(data6))) {
        const err12 = {
          instancePath: instancePath + '/minutes_asked',
          schemaPath: '#/properties/minutes_asked/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err12];
        } else {
          vErrors.push(err12);
        }
        errors++;
      }
    }
    if (data.agreed_by !== undefined) {
      if (
        !validate134(data.agreed_by, {
          instancePath: instancePath + '/agreed_by',
          parentData: data,
          parentDataProperty: 'agreed_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate134.errors);
        errors = vErrors.length;
      }
    }
    if (data.may_step_down !== undefined) {
      if (typeof data.may_step_down !== 'boolean') {
        const err13 = {
          instancePath: instancePath + '/may_step_down',
          schemaPath: '#/properties/may_step_down/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        if (vErrors === null) {
          vErrors = [err13];
        } else {
          vErrors.push(err13);
        }
        errors++;
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
  validate800.errors = vErrors;
  return errors === 0;
}
validate800.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema204 = {
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    rule: { $ref: 'outcome.schema.json#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    level: { $ref: 'outcome.schema.json#/$defs/name' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    because: { $ref: 'dictionary.schema.json#/$defs/text' },
    explained_by: { $ref: 'outcome.schema.json#/$defs/sentence' },
    ask: { $ref: 'outcome.schema.json#/$defs/sentences' },
    do: { $ref: 'outcome.schema.json#/$defs/sentences' },
  },
  required: ['protocol', 'rule', 'title', 'ask', 'do'],
  additionalProperties: false,
};

function validate807(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate807.evaluated;
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
  validate807.errors = vErrors;
  return errors === 0;
}
validate807.evaluated = { dynamicProps: false, dynamicItems: false };

function validate813(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate813.evaluated;
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
  validate813.errors = vErrors;
  return errors === 0;
}
validate813.evaluated = { dynamicProps: false, dynamicItems: false };

function validate815(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate815.evaluated;
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
        !validate153(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
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
  validate815.errors = vErrors;
  return errors === 0;
}
validate815.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate805(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate805.evaluated;
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
    if (data.rule === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
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
    if (data.ask === undefined) {
      const err3 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ask' },
      };
      if (vErrors === null) {
        vErrors = [err3];
      } else {
        vErrors.push(err3);
      }
      errors++;
    }
    if (data.do === undefined) {
      const err4 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'do' },
      };
      if (vErrors === null) {
        vErrors = [err4];
      } else {
        vErrors.push(err4);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema204.properties, key0)) {
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
    if (data.protocol !== undefined) {
      if (
        !validate766(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate766.errors);
        errors = vErrors.length;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate807(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate807.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate768(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate807(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate807.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate768(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.because !== undefined) {
      if (
        !validate768(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.explained_by !== undefined) {
      if (
        !validate813(data.explained_by, {
          instancePath: instancePath + '/explained_by',
          parentData: data,
          parentDataProperty: 'explained_by',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate813.errors);
        errors = vErrors.length;
      }
    }
    if (data.ask !== undefined) {
      if (
        !validate815(data.ask, {
          instancePath: instancePath + '/ask',
          parentData: data,
          parentDataProperty: 'ask',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate815.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      if (
        !validate815(data.do, {
          instancePath: instancePath + '/do',
          parentData: data,
          parentDataProperty: 'do',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate815.errors);
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
  validate805.errors = vErrors;
  return errors === 0;
}
validate805.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate820(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate820.evaluated;
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
        !validate137(data[i0], {
          instancePath: instancePath + '/' + i0,
          parentData: data,
          parentDataProperty: i0,
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate820.errors = vErrors;
  return errors === 0;
}
validate820.evaluated = { items: true, dynamicProps: false, dynamicItems: false };

function validate825(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate825.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
  validate825.errors = vErrors;
  return errors === 0;
}
validate825.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema210 = {
  type: 'object',
  properties: {
    fault: { $ref: 'outcome.schema.json#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    says: { $ref: 'dictionary.schema.json#/$defs/text' },
    do: { $ref: 'outcome.schema.json#/$defs/sentences' },
    readings: { type: 'array', items: { $ref: 'outcome.schema.json#/$defs/reading' } },
    changes: { type: 'array', items: { $ref: '#/$defs/doubted' } },
  },
  required: ['fault', 'title', 'says', 'do', 'readings', 'changes'],
  additionalProperties: false,
};

function validate835(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate835.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate142(data.unit, {
          instancePath: instancePath + '/unit',
          parentData: data,
          parentDataProperty: 'unit',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate142.errors);
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
  validate835.errors = vErrors;
  return errors === 0;
}
validate835.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

const schema212 = {
  type: 'object',
  properties: {
    protocol: { $ref: 'dictionary.schema.json#/$defs/name' },
    rule: { $ref: 'outcome.schema.json#/$defs/name' },
    title: { $ref: 'dictionary.schema.json#/$defs/text' },
    level: { $ref: 'outcome.schema.json#/$defs/name' },
  },
  required: ['protocol', 'rule', 'title'],
  additionalProperties: false,
};

function validate839(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate839.evaluated;
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
    if (data.rule === undefined) {
      const err1 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
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
    for (const key0 in data) {
      if (!(key0 === 'protocol' || key0 === 'rule' || key0 === 'title' || key0 === 'level')) {
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
    if (data.protocol !== undefined) {
      if (
        !validate766(data.protocol, {
          instancePath: instancePath + '/protocol',
          parentData: data,
          parentDataProperty: 'protocol',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate766.errors);
        errors = vErrors.length;
      }
    }
    if (data.rule !== undefined) {
      if (
        !validate807(data.rule, {
          instancePath: instancePath + '/rule',
          parentData: data,
          parentDataProperty: 'rule',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate807.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate768(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate807(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate807.errors);
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
  validate839.errors = vErrors;
  return errors === 0;
}
validate839.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate830(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate830.evaluated;
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
        !validate807(data.fault, {
          instancePath: instancePath + '/fault',
          parentData: data,
          parentDataProperty: 'fault',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate807.errors);
        errors = vErrors.length;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate768(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.says !== undefined) {
      if (
        !validate768(data.says, {
          instancePath: instancePath + '/says',
          parentData: data,
          parentDataProperty: 'says',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.do !== undefined) {
      if (
        !validate815(data.do, {
          instancePath: instancePath + '/do',
          parentData: data,
          parentDataProperty: 'do',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate815.errors);
        errors = vErrors.length;
      }
    }
    if (data.readings !== undefined) {
      let data4 = data.readings;
      if (Array.isArray(data4)) {
        const len0 = data4.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate835(data4[i0], {
              instancePath: instancePath + '/readings/' + i0,
              parentData: data4,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate835.errors);
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
            !validate839(data6[i1], {
              instancePath: instancePath + '/changes/' + i1,
              parentData: data6,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate839.errors);
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
  validate830.errors = vErrors;
  return errors === 0;
}
validate830.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate846(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  let vErrors = null;
  let errors = 0;
  const evaluated0 = validate846.evaluated;
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
        !validate137(data.observation, {
          instancePath: instancePath + '/observation',
          parentData: data,
          parentDataProperty: 'observation',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate137.errors);
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
        !validate153(data.because, {
          instancePath: instancePath + '/because',
          parentData: data,
          parentDataProperty: 'because',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate153.errors);
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
  validate846.errors = vErrors;
  return errors === 0;
}
validate846.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function validate765(
  data,
  { instancePath = '', parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {},
) {
  /*# sourceURL="ward_outcome.schema.json" */ let vErrors = null;
  let errors = 0;
  const evaluated0 = validate765.evaluated;
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
    if (data.level === undefined) {
      const err5 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'level' },
      };
      if (vErrors === null) {
        vErrors = [err5];
      } else {
        vErrors.push(err5);
      }
      errors++;
    }
    if (data.reads === undefined) {
      const err6 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'reads' },
      };
      if (vErrors === null) {
        vErrors = [err6];
      } else {
        vErrors.push(err6);
      }
      errors++;
    }
    if (data.advice === undefined) {
      const err7 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'advice' },
      };
      if (vErrors === null) {
        vErrors = [err7];
      } else {
        vErrors.push(err7);
      }
      errors++;
    }
    if (data.ask_first === undefined) {
      const err8 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'ask_first' },
      };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    if (data.take_first === undefined) {
      const err9 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'take_first' },
      };
      if (vErrors === null) {
        vErrors = [err9];
      } else {
        vErrors.push(err9);
      }
      errors++;
    }
    if (data.missing === undefined) {
      const err10 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'missing' },
      };
      if (vErrors === null) {
        vErrors = [err10];
      } else {
        vErrors.push(err10);
      }
      errors++;
    }
    if (data.unobtainable === undefined) {
      const err11 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'unobtainable' },
      };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    if (data.declined === undefined) {
      const err12 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'declined' },
      };
      if (vErrors === null) {
        vErrors = [err12];
      } else {
        vErrors.push(err12);
      }
      errors++;
    }
    if (data.would_tell_more === undefined) {
      const err13 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'would_tell_more' },
      };
      if (vErrors === null) {
        vErrors = [err13];
      } else {
        vErrors.push(err13);
      }
      errors++;
    }
    if (data.refused === undefined) {
      const err14 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'refused' },
      };
      if (vErrors === null) {
        vErrors = [err14];
      } else {
        vErrors.push(err14);
      }
      errors++;
    }
    if (data.questioned === undefined) {
      const err15 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'questioned' },
      };
      if (vErrors === null) {
        vErrors = [err15];
      } else {
        vErrors.push(err15);
      }
      errors++;
    }
    if (data.caution === undefined) {
      const err16 = {
        instancePath,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'caution' },
      };
      if (vErrors === null) {
        vErrors = [err16];
      } else {
        vErrors.push(err16);
      }
      errors++;
    }
    for (const key0 in data) {
      if (!func5.call(schema192.properties, key0)) {
        const err17 = {
          instancePath,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: key0 },
        };
        if (vErrors === null) {
          vErrors = [err17];
        } else {
          vErrors.push(err17);
        }
        errors++;
      }
    }
    if (data.ward !== undefined) {
      if (
        !validate766(data.ward, {
          instancePath: instancePath + '/ward',
          parentData: data,
          parentDataProperty: 'ward',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate766.errors);
        errors = vErrors.length;
      }
    }
    if (data.edition !== undefined) {
      let data1 = data.edition;
      if (!(typeof data1 == 'number' && !(data1 % 1) && !isNaN(data1) && isFinite(data1))) {
        const err18 = {
          instancePath: instancePath + '/edition',
          schemaPath: '#/properties/edition/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        if (vErrors === null) {
          vErrors = [err18];
        } else {
          vErrors.push(err18);
        }
        errors++;
      }
    }
    if (data.title !== undefined) {
      if (
        !validate768(data.title, {
          instancePath: instancePath + '/title',
          parentData: data,
          parentDataProperty: 'title',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
    if (data.digest !== undefined) {
      if (typeof data.digest !== 'string') {
        const err19 = {
          instancePath: instancePath + '/digest',
          schemaPath: '#/properties/digest/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        if (vErrors === null) {
          vErrors = [err19];
        } else {
          vErrors.push(err19);
        }
        errors++;
      }
    }
    if (data.policy !== undefined) {
      if (
        !validate770(data.policy, {
          instancePath: instancePath + '/policy',
          parentData: data,
          parentDataProperty: 'policy',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate770.errors);
        errors = vErrors.length;
      }
    }
    if (data.at !== undefined) {
      let data5 = data.at;
      if (typeof data5 !== 'string' && data5 !== null) {
        const err20 = {
          instancePath: instancePath + '/at',
          schemaPath: '#/properties/at/type',
          keyword: 'type',
          params: { type: schema192.properties.at.type },
        };
        if (vErrors === null) {
          vErrors = [err20];
        } else {
          vErrors.push(err20);
        }
        errors++;
      }
    }
    if (data.level !== undefined) {
      if (
        !validate772(data.level, {
          instancePath: instancePath + '/level',
          parentData: data,
          parentDataProperty: 'level',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate772.errors);
        errors = vErrors.length;
      }
    }
    if (data.plan !== undefined) {
      if (
        !validate775(data.plan, {
          instancePath: instancePath + '/plan',
          parentData: data,
          parentDataProperty: 'plan',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate775.errors);
        errors = vErrors.length;
      }
    }
    if (data.response !== undefined) {
      if (
        !validate780(data.response, {
          instancePath: instancePath + '/response',
          parentData: data,
          parentDataProperty: 'response',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate780.errors);
        errors = vErrors.length;
      }
    }
    if (data.in_force !== undefined) {
      if (
        !validate800(data.in_force, {
          instancePath: instancePath + '/in_force',
          parentData: data,
          parentDataProperty: 'in_force',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate800.errors);
        errors = vErrors.length;
      }
    }
    if (data.reads !== undefined) {
      let data10 = data.reads;
      if (Array.isArray(data10)) {
        const len0 = data10.length;
        for (let i0 = 0; i0 < len0; i0++) {
          if (
            !validate131(data10[i0], {
              instancePath: instancePath + '/reads/' + i0,
              parentData: data10,
              parentDataProperty: i0,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate131.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err21 = {
          instancePath: instancePath + '/reads',
          schemaPath: '#/properties/reads/type',
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
    if (data.advice !== undefined) {
      let data12 = data.advice;
      if (Array.isArray(data12)) {
        const len1 = data12.length;
        for (let i1 = 0; i1 < len1; i1++) {
          if (
            !validate805(data12[i1], {
              instancePath: instancePath + '/advice/' + i1,
              parentData: data12,
              parentDataProperty: i1,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate805.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err22 = {
          instancePath: instancePath + '/advice',
          schemaPath: '#/properties/advice/type',
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
    if (data.ask_first !== undefined) {
      if (
        !validate820(data.ask_first, {
          instancePath: instancePath + '/ask_first',
          parentData: data,
          parentDataProperty: 'ask_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate820.errors);
        errors = vErrors.length;
      }
    }
    if (data.take_first !== undefined) {
      if (
        !validate820(data.take_first, {
          instancePath: instancePath + '/take_first',
          parentData: data,
          parentDataProperty: 'take_first',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate820.errors);
        errors = vErrors.length;
      }
    }
    if (data.missing !== undefined) {
      if (
        !validate820(data.missing, {
          instancePath: instancePath + '/missing',
          parentData: data,
          parentDataProperty: 'missing',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate820.errors);
        errors = vErrors.length;
      }
    }
    if (data.unobtainable !== undefined) {
      let data17 = data.unobtainable;
      if (Array.isArray(data17)) {
        const len2 = data17.length;
        for (let i2 = 0; i2 < len2; i2++) {
          if (
            !validate825(data17[i2], {
              instancePath: instancePath + '/unobtainable/' + i2,
              parentData: data17,
              parentDataProperty: i2,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate825.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err23 = {
          instancePath: instancePath + '/unobtainable',
          schemaPath: '#/properties/unobtainable/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err23];
        } else {
          vErrors.push(err23);
        }
        errors++;
      }
    }
    if (data.declined !== undefined) {
      let data19 = data.declined;
      if (Array.isArray(data19)) {
        const len3 = data19.length;
        for (let i3 = 0; i3 < len3; i3++) {
          if (
            !validate825(data19[i3], {
              instancePath: instancePath + '/declined/' + i3,
              parentData: data19,
              parentDataProperty: i3,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate825.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err24 = {
          instancePath: instancePath + '/declined',
          schemaPath: '#/properties/declined/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err24];
        } else {
          vErrors.push(err24);
        }
        errors++;
      }
    }
    if (data.would_tell_more !== undefined) {
      if (
        !validate820(data.would_tell_more, {
          instancePath: instancePath + '/would_tell_more',
          parentData: data,
          parentDataProperty: 'would_tell_more',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate820.errors);
        errors = vErrors.length;
      }
    }
    if (data.faults !== undefined) {
      let data22 = data.faults;
      if (Array.isArray(data22)) {
        const len4 = data22.length;
        for (let i4 = 0; i4 < len4; i4++) {
          if (
            !validate830(data22[i4], {
              instancePath: instancePath + '/faults/' + i4,
              parentData: data22,
              parentDataProperty: i4,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate830.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err25 = {
          instancePath: instancePath + '/faults',
          schemaPath: '#/properties/faults/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err25];
        } else {
          vErrors.push(err25);
        }
        errors++;
      }
    }
    if (data.refused !== undefined) {
      let data24 = data.refused;
      if (Array.isArray(data24)) {
        const len5 = data24.length;
        for (let i5 = 0; i5 < len5; i5++) {
          if (
            !validate846(data24[i5], {
              instancePath: instancePath + '/refused/' + i5,
              parentData: data24,
              parentDataProperty: i5,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate846.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err26 = {
          instancePath: instancePath + '/refused',
          schemaPath: '#/properties/refused/type',
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
    if (data.questioned !== undefined) {
      let data26 = data.questioned;
      if (Array.isArray(data26)) {
        const len6 = data26.length;
        for (let i6 = 0; i6 < len6; i6++) {
          if (
            !validate846(data26[i6], {
              instancePath: instancePath + '/questioned/' + i6,
              parentData: data26,
              parentDataProperty: i6,
              rootData,
              dynamicAnchors,
            })
          ) {
            vErrors = joined(vErrors, validate846.errors);
            errors = vErrors.length;
          }
        }
      } else {
        const err27 = {
          instancePath: instancePath + '/questioned',
          schemaPath: '#/properties/questioned/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        if (vErrors === null) {
          vErrors = [err27];
        } else {
          vErrors.push(err27);
        }
        errors++;
      }
    }
    if (data.caution !== undefined) {
      if (
        !validate768(data.caution, {
          instancePath: instancePath + '/caution',
          parentData: data,
          parentDataProperty: 'caution',
          rootData,
          dynamicAnchors,
        })
      ) {
        vErrors = joined(vErrors, validate768.errors);
        errors = vErrors.length;
      }
    }
  } else {
    const err28 = { instancePath, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    if (vErrors === null) {
      vErrors = [err28];
    } else {
      vErrors.push(err28);
    }
    errors++;
  }
  validate765.errors = vErrors;
  return errors === 0;
}
validate765.evaluated = { props: true, dynamicProps: false, dynamicItems: false };

function joined(all, more) {
  if (all === null) return more;
  for (let at = 0; at < more.length && all.length < 10000; at++) all.push(more[at]);
  return all;
}
